// What a question before an act is, and what comes of the answers: the payload of the act.
import type { ActionName } from '$sim';
import type { MessageKey } from '../words';

/** What a field of a payload may be set to. */
export type AskValue = string | number | boolean;

export type Unit = 'L' | 'g' | 'kg' | 's' | 'm' | 'cm' | 'Lmin' | 'perMin' | 'mgL';

export interface AmountAsk {
  readonly field: string;
  readonly label: MessageKey;
  readonly unit: Unit;
  /** How much of the field's own unit one unit shown is, where they differ: 1000 for grams told in kilograms. */
  readonly scale?: number;
  readonly step: number;
  /** A second, longer stride. */
  readonly bigStep?: number;
  readonly chips: readonly number[];
  readonly start: number;
  readonly min: number;
  readonly max: number;
  readonly when?: When;
}

/** Asked only where this choice has been made. */
export interface When {
  readonly field: string;
  readonly is: readonly string[];
}

export interface ChoiceAsk {
  readonly field: string;
  readonly label: MessageKey;
  readonly options: readonly OptionAsk[];
  readonly start: AskValue;
  readonly when?: When;
  /** Only what the job's kit for a well offers of these; where it offers none, nothing is asked. */
  readonly offered?: 'packs' | 'seals' | 'lifts' | 'bits_mm' | 'pumps';
  /** It decides what else is asked and is no part of the payload. */
  readonly aside?: boolean;
}

export interface OptionAsk {
  readonly value: AskValue;
  readonly label: MessageKey;
  /** What is good to know once it is chosen. */
  readonly say?: MessageKey;
  readonly caution?: MessageKey;
  /** What the job must have brought along; else it is not offered. */
  readonly needs?: 'bentonite_kg' | 'clay_kg' | 'chlorine_kg' | 'moreGround';
}

export interface Ask {
  readonly action: ActionName;
  readonly heading: MessageKey;
  readonly say?: MessageKey;
  /** What is dangerous about the real work. */
  readonly caution?: MessageKey;
  readonly choices?: readonly ChoiceAsk[];
  /** Of several with the same field, at most one is asked at a time. */
  readonly amounts?: readonly AmountAsk[];
  /** Fields of the payload that are not asked. */
  readonly fixed?: Values;
  readonly confirm: MessageKey;
}

/** What is set in an open question, by field. */
export type Values = Readonly<Record<string, AskValue>>;

const asked = ({ when }: { readonly when?: When }, values: Values): boolean =>
  !when || when.is.includes(String(values[when.field]));

/** The amounts that are asked with these choices made. */
export function amountsAsked(ask: Ask, values: Values): readonly AmountAsk[] {
  return (ask.amounts ?? []).filter((amount) => asked(amount, values));
}

/** The choices that are asked with these choices made. */
export function choicesAsked(ask: Ask, values: Values): readonly ChoiceAsk[] {
  return (ask.choices ?? []).filter((choice) => asked(choice, values));
}

/** What an ask is set to before anything is touched. */
export function firstValues(ask: Ask): Record<string, AskValue> {
  const values: Record<string, AskValue> = { ...ask.fixed };
  for (const choice of ask.choices ?? []) values[choice.field] = choice.start;
  for (const amount of amountsAsked(ask, values)) values[amount.field] = amount.start;
  return values;
}

/**
 * The payload of an ask from what was set. Amounts are rounded to the step, so that 0.1 + 0.2 is 0.3; a choice that is
 * not asked is made as it starts.
 */
export function payloadOf(ask: Ask, values: Values): Record<string, AskValue> {
  const payload: Record<string, AskValue> = { ...ask.fixed };
  for (const choice of ask.choices ?? [])
    payload[choice.field] = asked(choice, values) ? (values[choice.field] ?? choice.start) : choice.start;
  for (const amount of amountsAsked(ask, payload))
    payload[amount.field] = stepped(Number(values[amount.field] ?? amount.start), amount);
  for (const choice of ask.choices ?? []) if (choice.aside) delete payload[choice.field];
  return payload;
}

/** The nearest amount to a value that a finger can set: to a hundredth, and within the limits. */
export function stepped(value: number, limits: Pick<AmountAsk, 'min' | 'max'>): number {
  return Math.min(limits.max, Math.max(limits.min, Math.round(value * 100) / 100));
}
