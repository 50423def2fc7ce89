// The careful crew with one planted mistake, and the stretch in which it was made.
import type { Senses } from '$sim';
import {
  createCrew,
  costsOf,
  dearest,
  jobFor,
  lessonById,
  nextIndex,
  playOn,
  settled,
  startRun,
  valueAt,
  valueOf,
  type Cost,
  type Crew,
  type Deed,
  type LessonId,
  type Value,
} from '$lessons';
import type { CarefulMemory } from '../../../lessons/crews/carefulMemory';
import { lookedBack } from './runs';

export interface Mistake {
  readonly name: string;
  /** The drill about it. */
  readonly lesson: LessonId;
  /** Something left out costs when its chance goes by: with this act. */
  readonly goneBy?: Deed['action'];
  /** What becomes of the crew's deed; it may push the memory. */
  readonly spoil: (deed: Deed | null, senses: Senses, memory: CarefulMemory) => Deed | null;
}

const changed =
  (action: Deed['action'], change: (payload: Deed['payload']) => Deed['payload']) =>
  (deed: Deed | null): Deed | null =>
    deed?.action === action ? { action, payload: { ...deed.payload, ...change(deed.payload) } } : deed;

/** The crew takes the hole for deep enough here, m. */
const EARLY_m = 6;

export const MISTAKES: readonly Mistake[] = [
  {
    name: 'no powder soaked',
    lesson: 'slick-fluid',
    spoil: (deed) => (deed?.action === 'addAdditive' ? null : deed),
  },
  { name: 'the level let down', lesson: 'casing-down', spoil: changed('pullOut', () => ({ topUp: false })) },
  {
    name: 'the hole ended early',
    lesson: 'deep-enough',
    spoil: (deed, _senses, memory) => {
      memory.goal_m = Math.min(memory.goal_m, EARLY_m);
      return deed;
    },
  },
  {
    name: 'the screen two metres high',
    lesson: 'the-screen',
    spoil: changed('planWell', ({ screenFrom_m, screenTo_m, packTop_m, sealTo_m }) => ({
      screenFrom_m: Number(screenFrom_m) - 2,
      screenTo_m: Number(screenTo_m) - 2,
      packTop_m: Math.max(1, Number(packTop_m) - 2),
      sealTo_m: Math.min(Number(sealTo_m), Math.max(1, Number(packTop_m) - 2) - 0.3),
    })),
  },
  {
    name: 'the seal left out',
    lesson: 'the-seal',
    goneBy: 'headWorks',
    spoil: (deed) => (deed?.action === 'placeSeal' && deed.payload.seal !== 'cuttings' ? null : deed),
  },
  {
    name: 'pulled fast at a low level',
    lesson: 'casing-down',
    spoil: changed('pullOut', () => ({ topUp: false, speed_ms: 0.5 })),
  },
];

export interface Found {
  readonly name: string;
  readonly seed: number;
  /** Seconds at which the mistake was made, the first and the last. */
  readonly made_s: readonly [number, number];
  readonly start: number;
  readonly score: number;
  readonly dearest: readonly Cost[];
  /** One of the dearest stretches has the mistake in it. */
  readonly hit: boolean;
  /** Values that had to be worked out. */
  readonly valued: number;
}

/** Plays the drill with the mistake and looks for the dearest stretches, parted into so many. */
export function lookFor({ name, lesson: id, goneBy, spoil }: Mistake, seed: number, most: number): Found {
  const lesson = lessonById(id)!;
  const run = startRun(lesson, seed);
  const crew = createCrew('careful', jobFor(run, lesson));
  let first_s = Infinity;
  let last_s = 0;
  const spoilt: Crew = {
    name,
    memory: crew.memory,
    decide(senses) {
      const meant = crew.decide(senses);
      const early = (crew.memory as CarefulMemory).goal_m;
      const deed = spoil(meant, senses, crew.memory as CarefulMemory);
      const ended = early <= EARLY_m && (meant?.action === 'stopDrilling' || meant?.action === 'planWell');
      if (deed !== meant || ended) {
        first_s = Math.min(first_s, senses.time_s);
        last_s = senses.time_s;
      }
      if (goneBy !== undefined && deed?.action === goneBy) first_s = last_s = senses.time_s;
      return deed;
    },
  };
  playOn(run, lesson, spoilt);
  const { moments, marks, past } = lookedBack(run, most);
  const values: (Value | undefined)[] = moments.map(() => undefined);
  values[values.length - 1] = valueOf(run, lesson);
  let valued = 0;
  for (;;) {
    const best = dearest(costsOf(moments, values));
    if (best.length === 3 && settled(values, best[2]!.points)) break;
    const next = nextIndex({ values, taken: new Set() });
    if (next === null) break;
    values[next] = valueAt(past, marks[next]!);
    valued++;
  }
  const found = dearest(costsOf(moments, values));
  return {
    name,
    seed,
    made_s: [first_s, last_s],
    start: values[0]!.score,
    score: values.at(-1)!.score,
    dearest: found,
    hit: found.some(({ from, to }) => from.tick <= last_s && to.tick >= first_s),
    valued,
  };
}
