// One reference row: inputs, the published or derived answer, how far it may be off, and where it comes from.
// Each row becomes one test whose title starts with its mark in brackets, so that rows can be counted by mark.
import { expect, test } from 'vitest';

/** V read in a public text; V2 read in a text that quotes the original; M from memory; D derived here from a stated formula; R recomputed. */
export type Mark = 'V' | 'V2' | 'M' | 'D' | 'R';

/** Allowed difference: relative to the expected value, absolute in its unit, or none at all. */
export type Tolerance = { rel: number } | { abs: number } | 'exact';

/** A published range the computed value (or each of them) must lie in, ends included. */
export interface Range {
  from: number;
  to: number;
}

export interface RowOf {
  /** Row code, such as MF-1. */
  id: string;
  mark: Mark;
  /** What is checked, in words a driller understands, with the inputs. */
  about: string;
  source: string;
  expected: number | readonly number[] | Range;
  /** Left out when a range is expected. */
  tolerance?: Tolerance;
  compute: () => number | readonly number[];
}

/** Registers one row as a test. */
export function row(r: RowOf): void {
  test(`[${r.mark}] ${r.id} ${r.about}`, () => {
    const got = r.compute();
    const values = typeof got === 'number' ? [got] : got;
    expect(values.length, 'the row computes nothing').toBeGreaterThan(0);
    const expected = r.expected;
    if (typeof expected === 'object' && 'from' in expected) {
      for (const value of values) {
        expect(value, r.source).toBeGreaterThanOrEqual(expected.from);
        expect(value, r.source).toBeLessThanOrEqual(expected.to);
      }
      return;
    }
    const answers = typeof expected === 'number' ? [expected] : expected;
    expect(values.length, 'one computed value for each expected one').toBe(answers.length);
    if (r.tolerance === undefined) throw new Error(`row ${r.id} needs a tolerance`);
    answers.forEach((answer, i) => {
      const value = values[i];
      if (r.tolerance === 'exact') {
        expect(value, r.source).toBe(answer);
        return;
      }
      const allowed = 'rel' in r.tolerance! ? r.tolerance.rel * Math.abs(answer) : r.tolerance!.abs;
      const off = Math.abs(value - answer);
      expect(off, `${value} against ${answer} (${r.source}), allowed ${allowed}`).toBeLessThanOrEqual(allowed);
    });
  });
}
