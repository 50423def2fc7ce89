// The statements of a class before other people's judges: a validator, and a store of learning records on this computer.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { statementsOf, writeStatements } from '../../src/classroom/exports/statements';
import { bigClass, CLASS } from '../src/classroom/aClass';
import { complaints, install, openStore, type Store } from './store';

const LEARNERS = 40;
const here = dirname(fileURLToPath(import.meta.url));
const statements = statementsOf(bigClass(LEARNERS));

let store: Store;
beforeAll(async () => {
  await install();
  store = await openStore();
}, 180_000);
afterAll(() => store?.close());

describe('the validator', () => {
  test.each([
    ['an awkward class', statementsOf(CLASS)],
    ['a whole class', statements],
  ])('has nothing against the statements of %s', (_what, list) => {
    expect(list.length).toBeGreaterThan(3);
    for (const statement of list) expect(complaints(statement)).toEqual([]);
  });

  test('would complain of a wrong one', () => {
    const [first] = statements;
    const { actor: _actor, ...nobody } = first!;
    for (const wrong of [
      nobody,
      { ...first, id: 'T-07' },
      { ...first, verb: { ...first!.verb, id: 'passed' } },
      { ...first, result: { ...first!.result, duration: '11 minutes' } },
    ])
      expect(complaints(wrong)).not.toEqual([]);
  });
});

describe('the store', () => {
  test('takes the file as it is written', async () => {
    const { status, answer } = await store.post(writeStatements(bigClass(LEARNERS)));
    expect(status).toBe(200);
    expect(answer).toEqual(statements.map(({ id }) => id));
  });

  test('takes it again without a word, and keeps each statement once', async () => {
    expect((await store.post(writeStatements(bigClass(LEARNERS)))).status).toBe(200);
    const { status, answer } = await store.get(statements[0]!.id);
    expect(status).toBe(200);
    expect(answer).toMatchObject({ id: statements[0]!.id, result: statements[0]!.result });
  });

  test('refuses another statement under an id that it has', async () => {
    const [first] = statements;
    const { status } = await store.post([{ ...first, result: { ...first!.result, completion: false } }]);
    expect(status).toBe(409);
  });

  test('refuses what is no statement', async () => {
    const [first] = statements;
    expect((await store.post([{ ...first, id: 'T-07' }])).status).toBe(400);
    expect((await store.post([{ ...first, result: { score: { scaled: 80 } } }])).status).toBe(400);
  });
});

test('the lock file names no registry', () => {
  expect(readFileSync(join(here, 'package-lock.json'), 'utf8')).not.toContain('"resolved"');
});
