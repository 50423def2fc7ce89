// Where there is no store on the device, everything still works for as long as the page is open.
import { expect, it } from 'vitest';
import { FIRST_SETTINGS, type Learner } from '../../../src/app/records';
import { openStorage, type StorageTrouble } from '../../../src/app/storage';

const learner = (id: string): Learner => ({ id, picture: null, number: 1, made_ms: 0, best: {} });

it('tells that the store is missing and keeps things in memory', async () => {
  const told: StorageTrouble[] = [];
  const storage = await openStorage((trouble) => told.push(trouble));
  expect(told).toEqual(['missing']);
  await storage.put('learners', learner('T-01'));
  await storage.put('learners', learner('T-02'));
  await storage.put('settings', FIRST_SETTINGS);
  expect(await storage.all('learners')).toEqual([learner('T-01'), learner('T-02')]);
  expect(await storage.get('settings', 'settings')).toEqual(FIRST_SETTINGS);
  await storage.remove('learners', 'T-01');
  expect(await storage.get('learners', 'T-01')).toBeUndefined();
  expect(await storage.get('runs', 'none')).toBeUndefined();
});
