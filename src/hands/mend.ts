// The hands that mend: each is there only when there is something of its kind to do.
import type { MendWord, Senses } from '$sim';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';

function mendHand(desk: Desk, what: MendWord): Hand {
  const id = `mend-${what}`;
  return {
    form: 'button',
    id,
    drawing: what === 'tool' ? 'hook' : what === 'ditch' ? 'ditch' : 'mend',
    label: `work.mend.${what}`,
    detail: { key: `work.mend.${what}.say` },
    whyNot: desk.whyNot('mend', { what }),
    press: () => desk.act(id, 'mend', { what }),
  };
}

/** A dead engine, a torn hose. */
export function mendPump(desk: Desk, { pump }: Senses): Hand[] {
  const broken: MendWord[] = [];
  if (pump.dead) broken.push('engine');
  if (pump.hose !== 'whole') broken.push('hose');
  return broken.map((what) => mendHand(desk, what));
}

/** A ditch while it rains in and there is none. */
export const mendPit = (desk: Desk, { sky, pit }: Senses): Hand[] =>
  sky !== 'dry' && !pit.ditch ? [mendHand(desk, 'ditch')] : [];

/** The hook, where the bit has been refused and the stem is out of the hole: nobody can see what lies there. */
export function mendStem(desk: Desk): Hand[] {
  const { record, scenario } = desk.session.run;
  const may = (scenario.faults?.length ?? 0) > 0 || scenario.live === true;
  const refused = record.events.some(({ name }) => name === 'bitRefused');
  return may && refused && desk.whyNot('mend', { what: 'tool' }) === null ? [mendHand(desk, 'tool')] : [];
}
