// The hands at the tray and at the notebook: samples caught and named, layers logged, notes written.
import type { Senses } from '$sim';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';

/** The oldest sample without a name, or null. */
export function nextUnnamed(tray: Senses['tray']): number | null {
  return tray.find((sample) => sample.named === null)?.sample ?? null;
}

export function trayHands(desk: Desk, { tray, stem }: Senses): Hand[] {
  const unnamed = nextUnnamed(tray);
  const last = tray.at(-1)?.sample ?? null;
  const toName = unnamed ?? last;
  const empty = { key: 'work.nameSample.empty' };
  return [
    {
      form: 'button',
      id: 'catchSample',
      drawing: 'catchSample',
      label: 'work.catchSample',
      detail: { key: 'work.catchSample.count', data: { n: tray.length } },
      whyNot: desk.whyNot('catchSample', { label_m: Math.max(0, stem.bit_m) }),
      asks: true,
      press: () => desk.open('catchSample'),
      shortcut: 'catchSample',
    },
    {
      form: 'button',
      id: 'nameSample',
      drawing: 'nameSample',
      label: 'work.nameSample',
      detail:
        unnamed !== null
          ? { key: 'work.nameSample.next', data: { sample: unnamed } }
          : { key: last === null ? 'work.nameSample.empty' : 'work.nameSample.none' },
      whyNot: toName === null ? empty : desk.whyNot('nameSample', { sample: toName, main: 'unknown' }),
      asks: true,
      press: () => (toName === null ? desk.refuse('nameSample', empty) : desk.name(toName)),
      shortcut: 'nameSample',
    },
  ];
}

export function bookHands(desk: Desk, layers: number, notes: number): Hand[] {
  return [
    {
      form: 'button',
      id: 'logLayer',
      drawing: 'logLayer',
      label: 'work.logLayer',
      detail: { key: 'work.logLayer.count', data: { n: layers } },
      whyNot: desk.whyNot('logLayer', { from_m: 0, to_m: 1, kind: 'unknown' }),
      asks: true,
      press: () => desk.open('logLayer'),
      shortcut: 'logLayer',
    },
    {
      form: 'button',
      id: 'note',
      drawing: 'note',
      label: 'work.note',
      detail: { key: 'work.note.count', data: { n: notes } },
      whyNot: desk.whyNot('note', { text: ' ' }),
      asks: true,
      press: () => desk.open('note'),
      shortcut: 'note',
    },
  ];
}
