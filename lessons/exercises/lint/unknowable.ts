// What a lesson judges and nobody can know, because the senses for it are off.

import type { ItemId } from '../../rubric/ids';
import type { Lesson } from '../../schema';
import type { Finding } from './finding';

type Given = Lesson['senses'][number] | Lesson['gauges'][number];

const TRAY: readonly Given[] = ['tray'];
const FLUID: readonly Given[] = ['feel', 'funnel', 'fluid'];
const CLOCK: readonly Given[] = ['clock'];
const BIT: readonly Given[] = ['stem', 'torque'];
const PIT: readonly Given[] = ['pit', 'stick', 'pitLevel'];
const RETURNS: readonly Given[] = ['returns', 'flow', 'loading'];

/** One of these must be on for the item to be known while the work goes on. Items that are not here ask for what everybody sees, or for a plan. */
const NEEDS: Partial<Record<ItemId, readonly Given[]>> = {
  sampleEachRod: TRAY,
  labelsTrue: TRAY,
  namedRight: TRAY,
  ownLogTrue: TRAY,
  changesFound: TRAY,
  stretchEnough: TRAY,
  noDeeper: TRAY,
  screenPlace: TRAY,
  slotFits: TRAY,
  fluidTried: FLUID,
  doseFits: FLUID,
  clearedStops: [...RETURNS, 'bed'],
  fairFeed: [...RETURNS, ...BIT],
  easedOff: RETURNS,
  littleLost: [...RETURNS, ...PIT],
  levelHeld: [...RETURNS, ...PIT],
  pumpKeptWater: ['pump', 'flow', ...PIT],
  strainerOpen: ['pump', 'flow'],
  pitStood: PIT,
  heapDug: ['pit'],
  clayPace: BIT,
  bitClean: BIT,
  jobTime: CLOCK,
  shortStops: CLOCK,
  casingSoon: CLOCK,
};

export function unknowable({ rubric, senses, gauges }: Lesson): Finding[] {
  const on: readonly Given[] = [...senses, ...gauges];
  return rubric.flatMap(({ item }): Finding[] => {
    const needs = NEEDS[item];
    if (!needs || needs.some((one) => on.includes(one))) return [];
    return [{ level: 'warning', key: 'lint.sense.off', data: { item: `item.${item}` }, field: 'senses' }];
  });
}
