// A record noted before it is written survives a page that closes in the same moment.
import { afterEach, expect, it, vi } from 'vitest';
import { dropPending, notePending, pendingRecords } from '../../../src/app/pending';

function stubNotes(): Map<string, string> {
  const notes = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    get length() {
      return notes.size;
    },
    key: (i: number) => [...notes.keys()][i] ?? null,
    getItem: (key: string) => notes.get(key) ?? null,
    setItem: (key: string, text: string) => void notes.set(key, text),
    removeItem: (key: string) => void notes.delete(key),
  });
  return notes;
}

afterEach(() => vi.unstubAllGlobals());

it('gives back what was noted and not yet written, and nothing else', () => {
  const notes = stubNotes();
  notes.set('of another page', '{}');
  const written = notePending('settings', 'settings', { id: 'settings', hand: 'left' });
  notePending('learners', 'T-01', { id: 'T-01' });
  expect(pendingRecords()).toEqual([
    { store: 'settings', record: { id: 'settings', hand: 'left' } },
    { store: 'learners', record: { id: 'T-01' } },
  ]);
  written();
  dropPending('learners', 'T-01');
  expect(pendingRecords()).toEqual([]);
});

it('an older write does not take away the note of a newer one', () => {
  stubNotes();
  const older = notePending('runs', 'a', { id: 'a', ticks: 1 });
  notePending('runs', 'a', { id: 'a', ticks: 2 });
  older();
  expect(pendingRecords()).toEqual([{ store: 'runs', record: { id: 'a', ticks: 2 } }]);
});

it('leaves a frozen state out, which plain text would not bring back as it was', () => {
  const notes = stubNotes();
  notePending('states', 'a', { id: 'a', record: new Float64Array(3) })();
  expect(notes.size).toBe(0);
});

it('does without where the browser has no such store or no room', () => {
  expect(pendingRecords()).toEqual([]);
  stubNotes();
  vi.stubGlobal('localStorage', {
    length: 0,
    setItem: () => {
      throw new Error('full');
    },
  });
  expect(() => notePending('runs', 'a', { id: 'a' })()).not.toThrow();
});
