// What the examiner of an exercise says: one finding is one sentence, for the instructor.

import type { Said, WordData, WordKey } from '../../words/index';

export type LintKey = Extract<WordKey, `lint.${string}`>;
export type Level = 'wrong' | 'warning' | 'good';

export interface Finding {
  /** wrong: the exercise is not to be given out like this; warning: it may be meant; good: looked at and found in order. */
  readonly level: Level;
  readonly key: LintKey;
  readonly data: WordData;
  /** What an item of the rubric says of it: a sentence of its own that goes on from this one. */
  readonly because?: Said;
  /** Where in the exercise it can be set right, as a path: stocks.water_L, ground.layers.2, faults.0. */
  readonly field?: string;
}

/** Told often, so that a page can show it and stays alive. */
export interface LintStep {
  /** Share of the whole that is done, 0 to 1. */
  readonly share_frac: number;
  readonly doing: LintKey;
  readonly data: WordData;
}

export interface LintReport {
  /** What is wrong first, then warnings, then what is good. */
  readonly findings: readonly Finding[];
  /** Nothing is wrong. */
  readonly fit: boolean;
  /** Numbers of the grounds that were played, and each crew's points on them, in the same order; 0 where the crew before never got there. */
  readonly seeds: readonly number[];
  readonly careful_points: readonly number[];
  readonly green_points: readonly number[];
}

const ORDER: readonly Level[] = ['wrong', 'warning', 'good'];

/** By weight; what was found first stays first. */
export const byLevel = (findings: readonly Finding[]): Finding[] =>
  ORDER.flatMap((level) => findings.filter((one) => one.level === level));

export const oneDecimal = (value: number): number => Math.round(value * 10) / 10;
export const twoDecimals = (value: number): number => Math.round(value * 100) / 100;
