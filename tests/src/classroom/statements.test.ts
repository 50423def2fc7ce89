// The class as xAPI statements: ids, times, verbs, and what is left out. Whether a store takes them is tried in tests/xapi.
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isoDuration } from '../../../src/classroom/exports/duration';
import { nameUuid } from '../../../src/classroom/exports/nameUuid';
import { sha1 } from '../../../src/classroom/exports/sha1';
import { statementsOf, writeStatements } from '../../../src/classroom/exports/statements';
import { bigClass, CLASS } from './aClass';

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');

describe('an id from a name', () => {
  test('is that of RFC 9562, appendix A.4', () => {
    expect(nameUuid('www.example.com', '6ba7b810-9dad-11d1-80b4-00c04fd430c8')).toBe(
      '2ed6657d-e927-568b-95e1-2665a8aea6a2',
    );
  });

  test('rests on the SHA-1 of RFC 3174', () => {
    expect(hex(sha1(new TextEncoder().encode('abc')))).toBe('a9993e364706816aba3e25717850c26c9cd0d89d');
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(hex(sha1(bytes))).toBe(createHash('sha1').update(bytes).digest('hex'));
      }),
    );
  });
});

describe('a length of time', () => {
  test.each([
    [0, 'PT0S'],
    [45, 'PT45S'],
    [60, 'PT1M'],
    [61.5, 'PT1M1.5S'],
    [59.999, 'PT1M'],
    [5040, 'PT1H24M'],
    [3600, 'PT1H'],
    [90061.07, 'PT25H1M1.07S'],
    [-3, 'PT0S'],
  ])('of %f s is %s', (time_s, written) => expect(isoDuration(time_s)).toBe(written));

  test('can be read back to a hundredth of a second', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000_000 }), (hundredths) => {
        const [, h = '0', min = '0', s = '0'] = /^PT(?:(\d+)H)?(?:(\d+)M)?(?:([\d.]+)S)?$/.exec(
          isoDuration(hundredths / 100),
        )!;
        expect(Math.round((Number(h) * 3600 + Number(min) * 60 + Number(s)) * 100)).toBe(hundredths);
      }),
    );
  });
});

describe('the statements of a class', () => {
  const statements = statementsOf(CLASS);

  test('tell of each reproduced result once, by its verbs', () => {
    expect(statements.map(({ actor, verb }) => [actor.account.name, verb.id.split('/').pop()])).toEqual([
      ['T-07', 'completed'],
      ['T-07', 'passed'],
      ['fish', 'completed'],
      ['fish', 'failed'],
      ['T-08', 'attempted'],
      [expect.stringMatching(/^other-[0-9a-f]{8}$/), 'completed'],
      [expect.stringMatching(/^other-[0-9a-f]{8}$/), 'passed'],
    ]);
  });

  test('give score, success and times', () => {
    expect(statements[1]!.result).toMatchObject({
      completion: true,
      success: true,
      score: { scaled: 0.801, raw: 80.1, min: 0, max: 100 },
      duration: 'PT10M11.25S',
    });
    expect(statements[2]!.result).not.toHaveProperty('duration');
    expect(statements[4]!.result).toMatchObject({ completion: false });
    expect(statements[4]!.result).not.toHaveProperty('score');
  });

  test('name a learner by the sign within the class, at an address that leads nowhere', () => {
    expect(statements[0]!.actor.account).toEqual({
      homePage: 'https://hand-jetting-trainer.invalid/class/B7',
      name: 'T-07',
    });
    const addresses = JSON.stringify(statements).match(/https?:\/\/[^/"]+/g)!;
    expect([...new Set(addresses)].sort()).toEqual(['http://adlnet.gov', 'https://hand-jetting-trainer.invalid']);
    for (const kept of ['result-T-07.json', 'Amina']) expect(JSON.stringify(statements)).not.toContain(kept);
  });

  test('are the same when told again, and have one registration for each attempt', () => {
    expect(writeStatements(CLASS)).toBe(writeStatements(structuredClone(CLASS)));
    const many = statementsOf(bigClass(40));
    expect(new Set(many.map(({ id }) => id)).size).toBe(many.length);
    const attempts = new Set(many.map(({ context }) => context['registration']));
    expect(attempts.size).toBe(bigClass(40).results.length);
  });

  test('have another id where anything in them is another', () => {
    const [first] = CLASS.results;
    const other = { ...CLASS, results: [{ ...first!, score: 80.2 }] };
    expect(statementsOf(other)[1]!.id).not.toBe(statements[1]!.id);
    expect(statementsOf(other)[0]!.id).toBe(statements[0]!.id);
  });
});
