// The short form of a log gives back every legal log exactly, numbers to the bit; letters and parts give back every result.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ACTION_NAMES, ACTION_SPECS, malformedIn, type FieldSpec, type LogEntry } from '$sim';
import { joinParts, MOST_PARTS, packResult, readResult, resultParts, writeResult } from '$lessons';
import { ACTION_CODES } from '../../../lessons/results/actionCodes';
import { logOfText, logText } from '../../../lessons/results/logText';
import { bytesInPart } from '../../../lessons/results/resultParts';
import { handedIn } from './aClass';

function valueFor(spec: FieldSpec): fc.Arbitrary<unknown> {
  if (spec.type === 'boolean') return fc.boolean();
  if (spec.type === 'word') return fc.constantFrom(...spec.words);
  if (spec.type === 'text') return fc.string({ unit: 'grapheme', maxLength: Math.min(20, spec.maxLength) });
  return spec.whole
    ? fc.integer({ min: spec.min, max: spec.max })
    : fc.double({ min: spec.min, max: spec.max, noNaN: true });
}

/** Every act with all it may be given, optional fields left out or null as well. */
const entry: fc.Arbitrary<LogEntry> = fc
  .constantFrom(...ACTION_NAMES)
  .chain((action) => {
    const fields = ACTION_SPECS[action].fields.map((spec) => {
      const value = valueFor(spec);
      return spec.optional ? fc.oneof(value, fc.constant(null), fc.constant(undefined)) : value;
    });
    return fc.tuple(fc.nat(5000), fc.constant(action), fc.tuple(...fields));
  })
  .map(([since, action, values]): LogEntry => {
    const given = ACTION_SPECS[action].fields.map(({ name }, i) => [name, values[i]] as const);
    return [since, action, Object.fromEntries(given.filter(([, value]) => value !== undefined))];
  })
  .filter(([, action, payload]) => malformedIn(action, payload) === null);

/** Seconds since the entry before, made into seconds of the job. */
function inOrder(entries: readonly LogEntry[]): LogEntry[] {
  let tick = 0;
  return entries.map(([since, action, payload]) => [(tick += since), action, payload]);
}

const logs = fc.array(entry, { maxLength: 60 }).map(inOrder);

describe('the short form of a log', () => {
  it('gives back every legal log, numbers to the bit', () => {
    fc.assert(
      fc.property(logs, (log) => {
        const read = logOfText(logText(log));
        expect(read).toStrictEqual({ ok: true, log });
      }),
      { numRuns: 300 },
    );
  });

  it('never throws on what is none, and names the line', () => {
    fc.assert(
      fc.property(logs, fc.nat(), fc.string({ maxLength: 8 }), (log, at, put) => {
        const text = logText(log);
        const changed = text.slice(0, at % (text.length + 1)) + put + text.slice((at + 3) % (text.length + 1));
        const read = logOfText(changed);
        if (read.ok) for (const [, action, payload] of read.log) expect(malformedIn(action, payload)).toBeNull();
        else expect(read.line).toBeLessThan(changed.split('\n').length);
      }),
    );
    expect(logOfText('0f.5\n1q')).toEqual({ ok: false, line: 1 });
    expect(logOfText('0f7')).toEqual({ ok: false, line: 0 });
    expect(logOfText('0f.5,1')).toEqual({ ok: false, line: 0 });
  });

  it('has a code of its own for each act, and none begins with another', () => {
    const codes = Object.values(ACTION_CODES);
    expect(new Set(codes).size).toBe(ACTION_NAMES.length);
    for (const code of codes) {
      expect(code).toMatch(/^([a-z]|[A-Z][a-z])$/);
      expect(codes.filter((other) => other !== code && other.startsWith(code))).toEqual([]);
    }
  });
});

describe('a result', () => {
  const result = handedIn(1);

  it('comes back from file, letters and parts, whatever its log and answers', () => {
    fc.assert(
      fc.property(
        logs,
        fc.dictionary(fc.string({ maxLength: 10 }), fc.string({ maxLength: 30 }), { maxKeys: 4 }),
        (log, said) => {
          const answers = Object.fromEntries(Object.entries(said).filter(([name]) => name !== '__proto__'));
          const one = { ...result, log, answers, ticks: log.at(-1)?.[0] ?? 0 };
          expect(readResult(writeResult(one))).toEqual({ ok: true, result: one });
          expect(readResult(packResult(one))).toEqual({ ok: true, result: one });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is cut in parts no longer than asked, at most four, and put together in any order', () => {
    const letters = packResult(result);
    for (const most of [150, 200, 300, 600, 1451]) {
      const parts = resultParts(letters, most);
      const needed = Math.ceil((letters.length * 6) / 8 / bytesInPart(most));
      if (parts === null) {
        expect(needed).toBeGreaterThan(MOST_PARTS - 1);
        continue;
      }
      expect(parts.length).toBeLessThanOrEqual(MOST_PARTS);
      for (const part of parts) expect(part.length).toBeLessThanOrEqual(most);
      expect(joinParts([...parts].reverse())).toEqual({ whole: [letters], open: [], rest: [] });
      expect(joinParts([...parts, ...parts]).whole).toEqual([letters]);
    }
    expect(resultParts(letters, 20)).toBeNull();
  });

  it('is never mixed with another one', () => {
    const [mine, other] = [result, handedIn(2)].map((one) => resultParts(packResult(one), 300)!);
    const mixed = [mine![0]!, ...other!.slice(1)];
    expect(joinParts(mixed).whole).toEqual([]);
    expect(readResult(mixed.join('\n'))).toMatchObject({ ok: false, problem: 'problem.result.parts' });
    expect(joinParts([...mine!, ...other!].sort()).whole).toHaveLength(2);
  });
});
