// The careful crew with one planted mistake: its deeds are changed on the way, or its memory is pushed. The mistake must cost its own category only.

import type { Senses } from '$sim';
import { createCrew, type CategoryId, type Crew, type Deed } from '$lessons';
import type { CarefulMemory } from '../../lessons/crews/carefulMemory';

export interface Planted {
  readonly name: string;
  readonly category: CategoryId;
  /** Points that it must cost at least in its own category. */
  readonly costs: number;
  /** So long the crew only looks on, s. */
  readonly idle_s?: number;
  /** What becomes of the crew's deed; it may push the memory. */
  readonly spoil: (deed: Deed | null, senses: Senses, memory: CarefulMemory) => Deed | null;
}

const without =
  (action: Deed['action'], when: (senses: Senses) => boolean = () => true) =>
  (deed: Deed | null, senses: Senses): Deed | null =>
    deed?.action === action && when(senses) ? null : deed;

const withPayload =
  (action: Deed['action'], change: (payload: Deed['payload']) => Deed['payload']) =>
  (deed: Deed | null): Deed | null =>
    deed?.action === action ? { action, payload: { ...deed.payload, ...change(deed.payload) } } : deed;

export const PLANTED: readonly Planted[] = [
  { name: 'the cautions are not read', category: 'safety', costs: 6, spoil: without('readCaution') },
  { name: 'the bit stays on the bottom when the flow stops', category: 'safety', costs: 4, spoil: without('lift') },
  {
    name: 'hands go to the rod while the stem turns',
    category: 'safety',
    costs: 4,
    spoil: (deed, senses) =>
      deed?.action === 'setTurning' && deed.payload.on === false && senses.lastRefusal?.tick !== senses.time_s - 1
        ? { action: 'addRod', payload: {} }
        : deed,
  },
  {
    name: 'the hole is not cleared before a stop',
    category: 'hole',
    costs: 3.5,
    spoil: (deed, _senses, memory) => {
      if (memory.clearing_s >= 0 && memory.lifted) memory.stopping = true;
      return deed;
    },
  },
  {
    name: 'the second rod gets no sample',
    category: 'log',
    costs: 4,
    spoil: without('catchSample', (senses) => senses.stem.rods === 2),
  },
  {
    name: 'labels are a metre too deep',
    category: 'log',
    costs: 8,
    spoil: withPayload('catchSample', (payload) => ({ label_m: (payload.label_m as number) + 1 })),
  },
  {
    name: 'every sample is called clay',
    category: 'log',
    costs: 4,
    spoil: withPayload('nameSample', () => ({ main: 'clay' })),
  },
  {
    name: 'the powder is dumped',
    category: 'additives',
    costs: 4,
    spoil: withPayload('addAdditive', () => ({ manner: 'dumped' })),
  },
  {
    name: 'twice the powder and more',
    category: 'additives',
    costs: 4,
    spoil: withPayload('addAdditive', () => ({ mass_g: 1300 })),
  },
  { name: 'no powder at all', category: 'additives', costs: 8, spoil: without('addAdditive') },
  { name: 'two hours spent looking on', category: 'economy', costs: 6, idle_s: 7200, spoil: (deed) => deed },
];

/** A careful crew with the mistake. */
export function spoiltCrew(planted: Planted): Crew {
  const crew = createCrew('careful');
  return {
    name: planted.name,
    memory: crew.memory,
    decide: (senses) =>
      senses.time_s < (planted.idle_s ?? 0)
        ? null
        : planted.spoil(crew.decide(senses), senses, crew.memory as CarefulMemory),
  };
}
