// Parts that several questions share: an amount within the limits of the run's own table of actions, and the speeds of a pull.
import { ACTION_SPECS, type ActionName } from '$sim';
import type { MessageKey } from '../words';
import type { AmountAsk, ChoiceAsk } from './ask';

type Amount = Omit<AmountAsk, 'min' | 'max' | 'label'> & { label?: MessageKey; max?: number };

export function amount(action: ActionName, asked: Amount): AmountAsk {
  const spec = ACTION_SPECS[action].fields.find((field) => field.name === asked.field);
  if (spec?.type !== 'number') throw new Error(`${action} has no number ${asked.field}`);
  return { label: 'work.ask.amount', ...asked, min: spec.min, max: Math.min(asked.max ?? spec.max, spec.max) };
}

/** Speeds of moving stem or casing, m/s: a hand over hand pull, a steady one, a hurried one. */
export const STEM_SPEED_ms = { slow: 0.05, steady: 0.1, fast: 0.3 } as const;

export const speed: ChoiceAsk = {
  field: 'speed_ms',
  label: 'work.ask.speed',
  options: [
    { value: STEM_SPEED_ms.slow, label: 'work.ask.speed.slow' },
    { value: STEM_SPEED_ms.steady, label: 'work.ask.speed.steady' },
    { value: STEM_SPEED_ms.fast, label: 'work.ask.speed.fast' },
  ],
  start: STEM_SPEED_ms.steady,
};

/** Yes and no, where each has something to be said for it. */
export function yesNo(
  field: string,
  label: MessageKey,
  start: boolean,
  says: { yes: MessageKey; no: MessageKey },
): ChoiceAsk {
  return {
    field,
    label,
    options: [
      { value: true, label: 'work.ask.yes', say: says.yes },
      { value: false, label: 'work.ask.no', say: says.no },
    ],
    start,
  };
}
