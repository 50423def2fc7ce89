// What a hand on the screen is, as data: a button, a thing with less and more, or one act in a few amounts.
import type { KeyedMessage, MessageKey } from '../words';
import type { DrawingName } from './drawings';
import type { Holdable } from './hold.svelte';

/** In the order of the work: the last four are there where a well is made. */
export const GROUPS = ['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'annulus', 'water', 'finish', 'book'] as const;
export type HandGroup = (typeof GROUPS)[number];

interface HandCommon {
  readonly id: string;
  readonly drawing: DrawingName;
  readonly label: MessageKey;
  /** The small second line: how it stands now. */
  readonly detail: KeyedMessage;
  /** The key of its shortcut, for those who use keys. */
  readonly shortcut?: string;
}

/** One act that can be pressed. */
export interface Press {
  /** What is read aloud, where the label alone does not say it. */
  readonly name?: KeyedMessage;
  /** What stands on the button, where it is not the hand's label. */
  readonly text?: KeyedMessage;
  /** Why it cannot be done now; it can still be focused and pressed, and then says so. */
  readonly whyNot: KeyedMessage | null;
  press(): void;
  /** What goes on while it is held down, where it can be held. */
  readonly hold?: Holdable;
  readonly shortcut?: string;
}

export interface ButtonHand extends HandCommon, Press {
  readonly form: 'button';
  /** For a thing that is on or off. */
  readonly pressed?: boolean;
  /** A short word and a short line: it may be narrower than the rest. */
  readonly narrow?: boolean;
  /** It opens a question before anything is done. */
  readonly asks?: boolean;
}

export interface StepperHand extends HandCommon {
  readonly form: 'stepper';
  /** 0 to 1, drawn as marks between less and more. */
  readonly level_frac: number;
  /** How many marks there are. */
  readonly marks: number;
  readonly less: Press;
  readonly more: Press;
}

export interface AmountsHand extends HandCommon {
  readonly form: 'amounts';
  readonly amounts: readonly Press[];
}

export type Hand = ButtonHand | StepperHand | AmountsHand;

export interface HandSet {
  readonly group: HandGroup;
  readonly hands: readonly Hand[];
}
