// What must hold of every state, whatever a crew has done. Rules go by the unit in a field's name, so that a new field is judged too.
import { ledgerOf, sensesOf, type Run } from '../../../sim';

/** Relative error of any balance. */
const MOST_LOST = 1e-9;
/** Amounts, shares, times, sizes: none of them may be less than nothing. */
const NEVER_NEGATIVE = /_(m3|m4|kg|kgm3|L|gL|frac|s|m2|m|Pa)$/;
type Rule = { readonly least: number; readonly most: number };

/** With a sign: how far a lift (negative) or a lowering has still to go; the time reckoned for a rod, which the last one may overrun. */
const SIGNED: readonly string[] = ['motion_m', 'left_s'];
/** Depths of water in and about a well: it may stand in the casing above the ground; and in a full pit above the rim until it runs off. */
const STANDS_UP = /(well|signs|stick)\..*(level_m|static_m|lowest_m|recovered_m)$/;
const ANY: Rule = { least: -Infinity, most: Infinity };
/** Depths of which -1 says that there is none. */
const MAY_BE_NONE: readonly string[] = ['refusedAt_m', 'looked_m'];
/** Shares of a whole. */
const SHARES = /_frac$/;
/** May pass 1: the fluid that comes back when the hole overflows, as a share of what is pumped. */
const OVER_ONE: readonly string[] = ['returns_frac'];

const rules = new Map<string, Rule>();

function ruleFor(name: string): Rule {
  let rule = rules.get(name);
  if (!rule) {
    const signed = SIGNED.includes(name) || !NEVER_NEGATIVE.test(name);
    const least = signed ? -Infinity : MAY_BE_NONE.includes(name) ? -1 : 0;
    rule = { least, most: SHARES.test(name) && !OVER_ONE.includes(name) ? 1 : Infinity };
    rules.set(name, rule);
  }
  return rule;
}

function fault(value: number, { least, most }: Rule, path: string): string | null {
  if (!(value - value === 0)) return `${path} is ${value}`;
  return value < least || value > most ? `${path} is ${value}, allowed ${least} to ${most}` : null;
}

function firstFault(holder: object, rule: Rule | null, path: string): string | null {
  if (holder instanceof Float64Array) {
    for (let i = 0; i < holder.length; i++) {
      const found = fault(holder[i], rule!, `${path}[${i}]`);
      if (found) return found;
    }
    return null;
  }
  const list = Array.isArray(holder);
  for (const [key, value] of Object.entries(holder) as [string, unknown][]) {
    const here = list ? `${path}[${key}]` : `${path}.${key}`;
    const own = list ? rule! : STANDS_UP.test(here) ? ANY : ruleFor(key);
    if (typeof value === 'number') {
      const found = fault(value, own, here);
      if (found) return found;
    } else if (typeof value === 'object' && value !== null) {
      const found = firstFault(value, own, here);
      if (found) return found;
    }
  }
  return null;
}

/** The first thing wrong with the run as it stands, in words, or null. */
export function unsound(run: Run): string | null {
  const { state } = run;
  const found = firstFault(state, null, 'state') ?? firstFault(sensesOf(run), null, 'senses');
  if (found) return found;
  for (const [store, lost] of Object.entries(ledgerOf(run)) as [string, number][]) {
    if (!(lost <= MOST_LOST)) return `of ${store} ${lost} is lost`;
  }
  if (state.stem.bit_m > state.hole.depth_m + 1e-9)
    return `the bit stands at ${state.stem.bit_m}, the bottom at ${state.hole.depth_m}`;
  const { free, total } = sensesOf(run).hands;
  return free >= 0 && free <= total ? null : `${free} of ${total} hands are free`;
}
