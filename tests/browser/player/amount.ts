// An amount set as a person sets it: from what stands there or from a common one, by the short and the long stride, read off the page.
import { expect, type Locator } from '@playwright/test';
import type { Hands } from './hands';

const UNITS: Readonly<Record<string, number>> = { h: 3600, min: 60, s: 1 };

/** The number in words like "1,000 g", "0.25 m", "1 h 30 min". */
export function amountIn(words: string): number {
  const parts = [...words.matchAll(/([\d,]+(?:\.\d+)?) (\S+)/g)];
  if (parts.length === 0) throw new Error(`no amount in "${words}"`);
  const timed = parts.every(([, , unit]) => unit! in UNITS);
  return parts.reduce(
    (sum, [, figure, unit]) => sum + Number(figure!.replace(/,/g, '')) * (timed ? UNITS[unit!]! : 1),
    0,
  );
}

interface Press {
  readonly name: string;
  readonly times: number;
}

/** How many presses of the strides make up a difference; null where they do not meet it. */
function strides(difference: number, steps: readonly number[]): number[] | null {
  const way = Math.sign(difference);
  const far = Math.abs(difference);
  const [long = 0, short = 0] = steps.length > 1 ? steps : [0, steps[0]];
  let best: number[] | null = null;
  for (const times of long > 0 ? [Math.floor(far / long), Math.ceil(far / long)] : [0]) {
    const rest = (far - times * long) / short;
    if (Math.abs(rest - Math.round(rest)) > 1e-6) continue;
    const presses = [way * times, way * Math.round(rest)];
    const count = (of: number[]): number => Math.abs(of[0]!) + Math.abs(of[1]!);
    if (best === null || count(presses) < count(best)) best = presses;
  }
  return best;
}

/** The presses that set an amount, the fewest that there are. */
export function pressesTo(wanted: number, stands: number, names: readonly string[]): readonly Press[] {
  const stepNames = names.filter((name) => / more$/.test(name));
  const chips = names.filter((name) => !/ (?:more|less)$/.test(name));
  const steps = stepNames.map(amountIn).sort((a, b) => b - a);
  const named = (step: number, way: number): string =>
    stepNames.find((name) => amountIn(name) === step)!.replace(/more$/, way > 0 ? 'more' : 'less');
  let best: Press[] | null = null;
  for (const chip of [null, ...chips]) {
    const from = chip === null ? stands : amountIn(chip);
    const counts = strides(wanted - from, steps);
    if (!counts) continue;
    const of = steps.length > 1 ? counts : [counts[1]!];
    const strided = of.map((times, i) => ({
      name: named(steps[i]!, times),
      times: Math.abs(times),
      way: Math.sign(times),
    }));
    const presses = [
      ...(chip === null ? [] : [{ name: chip, times: 1 }]),
      // Up before down: a stride down from a small amount would stop at the least that can be set.
      ...strided.filter(({ times }) => times > 0).sort((a, b) => b.way - a.way),
    ];
    const count = (all: readonly Press[]): number => all.reduce((sum, { times }) => sum + times, 0);
    if (best === null || count(presses) < count(best)) best = presses;
  }
  if (best === null) throw new Error(`${wanted} cannot be set from ${stands} with ${names.join(', ')}`);
  return best;
}

export async function setAmount(hands: Hands, field: Locator, wanted: number): Promise<void> {
  const shown = field.locator('output');
  const names = await field
    .getByRole('button')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? one.textContent!.trim()));
  for (const { name, times } of pressesTo(wanted, amountIn(await shown.innerText()), names))
    await hands.press(field.getByRole('button', { name, exact: true }), times);
  await expect.poll(async () => amountIn(await shown.innerText())).toBeCloseTo(wanted, 6);
}
