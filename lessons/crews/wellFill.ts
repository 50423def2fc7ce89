// How a crew fills the ring: pack to over the screen, backfill under the seal, the seal. It pours by reckoning and sounds what became of it.

import type { Senses, WellPlan } from '$sim';
import { does, type Deed } from './crew';
import { mayTry, type Patience } from './patience';
import { tryAgain } from './wellCasing';
import type { WellMemory } from './wellMemory';
import { STYLES, type WellStyle } from './wellStyle';

/** Room round the casing by the metre, L, as a crew reckons it for its usual bit: a little more than the neat ring. */
const RING_Lm: Readonly<Record<WellPlan['casing'], number>> = { pvc50: 5.9, pvc63: 4.7, pvc63thin: 4.7, pvc110: 8 };
/** The fill stands high enough within this, m; less than this is not poured, L; a pour is no more than a barrow, L. */
const NEAR_m = 0.1;
const LEAST_L = 1;
const MOST_L = 60;
/** Poured at a time by a crew that sounds: so much of what is reckoned to be missing. */
const SHARE_frac = 0.8;
const GREEN_BUCKET_L = 40;
/** A seal ends this far over the pack, m. */
const OVER_PACK_m = 0.3;

interface Filling {
  readonly top_m: number;
  readonly deed: (volume_L: number) => Deed;
}

/** What is to be filled in now, and up to where; null when this filling is not wanted. */
function fillingOf(memory: WellMemory, style: WellStyle, plan: WellPlan): Filling | null {
  const rate_Lmin = style.pour_Lmin;
  switch (memory.filling) {
    case 'pack': {
      const { pack } = plan;
      if (pack === 'none') return null;
      return { top_m: plan.packTop_m, deed: (volume_L) => does('pourPack', { pack, volume_L, rate_Lmin }) };
    }
    case 'backfill':
      if (!style.backfills) return null;
      return {
        top_m: plan.seal === 'none' ? NEAR_m : plan.sealTo_m,
        // By the barrow it jams in the ring: a crew that sounds lets it trickle in.
        deed: (volume_L) =>
          style.trickles
            ? does('placeSeal', { seal: 'cuttings', volume_L, rate_Lmin })
            : does('backfill', { material: 'cuttings', volume_L }),
      };
    case 'seal': {
      const { seal } = plan;
      if (seal === 'none') return null;
      return { top_m: plan.sealFrom_m, deed: (volume_L) => does('placeSeal', { seal, volume_L, rate_Lmin }) };
    }
    case 'done':
      return null;
  }
}

const NEXT = { pack: 'backfill', backfill: 'seal', seal: 'done', done: 'done' } as const;

function next(memory: WellMemory): null {
  memory.filling = NEXT[memory.filling];
  memory.pours = 0;
  return null;
}

/** Pack and backfill; and the seal at once where the crew does not wash the well first: washing shakes a seal that has not set. */
export function fillDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  return memory.filling === 'seal' && STYLES[memory.style].washesFirst ? undefined : sealDeed(memory, patience, senses);
}

/** Where the plan leaves the seal open, a crew that seals plans one before it fills in under it. */
function ownSealDeed(memory: WellMemory, plan: WellPlan, senses: Senses): Deed | undefined {
  const open = plan.seal === 'none' && memory.filling === 'backfill' && memory.pours === 0;
  if (!open || memory.job.seal === 'left' || !tryAgain(memory, 'planSeal')) return undefined;
  const { seal, sealFrom_m, sealTo_m } = STYLES[memory.style].plan(senses, memory.lowest_m);
  const end_m = Math.min(sealTo_m, plan.packTop_m - OVER_PACK_m);
  return seal === 'none' || end_m <= sealFrom_m
    ? undefined
    : does('planWell', { ...plan, seal, sealFrom_m, sealTo_m: end_m });
}

/** One pour or one sounding; undefined when the ring is full or the crew leaves it. */
export function sealDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  if (memory.filling === 'done') return undefined;
  const style = STYLES[memory.style];
  const { plan, sounded, casing } = senses.well!;
  const own = plan === null ? undefined : ownSealDeed(memory, plan, senses);
  if (own !== undefined) return own;
  const filling = plan === null ? null : fillingOf(memory, style, plan);
  if (plan === null || filling === null) return next(memory);
  if (style.soundings === 0) {
    const reckoned_L = RING_Lm[plan.casing] * Math.max(0, casing.shoe_m - filling.top_m);
    if (memory.pours > 0) return next(memory);
    memory.pours++;
    return filling.deed(Math.max(LEAST_L, Math.min(GREEN_BUCKET_L, Math.round(reckoned_L))));
  }
  // Round a casing that has just come down the pack goes in at once.
  const fresh = memory.filling === 'pack' && senses.well!.poured.length === 0;
  if (!memory.sounded && !fresh) {
    if (!mayTry(patience, senses, 'sound')) return null;
    memory.sounded = true;
    return does('sound');
  }
  const top_m = sounded === null ? casing.shoe_m : sounded.top_m;
  const missing_m = top_m - filling.top_m;
  if (missing_m <= NEAR_m || memory.pours >= style.soundings) return next(memory);
  const share = missing_m < 1 ? 1 : SHARE_frac;
  const volume_L = Math.min(MOST_L, Math.max(LEAST_L, Math.round(RING_Lm[plan.casing] * missing_m * share)));
  memory.pours++;
  memory.sounded = false;
  return filling.deed(volume_L);
}
