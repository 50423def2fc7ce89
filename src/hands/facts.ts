// What a question says of a thing that is chosen in it, in the run's own figures: setting times, depths, bores, gaps.
import {
  CASINGS,
  DRILLING_PUMPS,
  SEALS,
  WELL_PUMPS,
  type DrillingPumpName,
  type SealName,
  type WellPumpName,
} from '$sim';
import type { SlotData } from '../words';
import type { AskValue } from './ask';

/** Millimetres in a metre. */
const MM = 1000;

/** A bit is told by the gap it leaves round a pipe in the middle, and by the ground it cuts away for each metre. */
function bitFacts(bit_mm: number): SlotData {
  const gap_mm = (outside_m: number): number => (bit_mm - outside_m * MM) / 2;
  const radius_m = bit_mm / 2 / MM;
  return {
    gap50_mm: gap_mm(CASINGS.pvc50.outside_m),
    gap63_mm: gap_mm(CASINGS.pvc63.outside_m),
    cut_L: Math.PI * radius_m * radius_m * 1000,
  };
}

export function factsOf(chosen: AskValue): SlotData {
  if (typeof chosen === 'number') return bitFacts(chosen);
  const seal = SEALS[chosen as SealName] as (typeof SEALS)[SealName] | undefined;
  if (seal) return { ready_s: seal.ready_s };
  const drilling = DRILLING_PUMPS[chosen as DrillingPumpName] as (typeof DRILLING_PUMPS)['small'] | undefined;
  if (drilling)
    return {
      shutOff_m: drilling.shutOff_m,
      free_Lmin: drilling.free_m3s * 60000,
      petrol: drilling.petrol_ratio,
    };
  const pump = WELL_PUMPS[chosen as WellPumpName] as (typeof WELL_PUMPS)[WellPumpName] | undefined;
  return pump ? { deepest_m: pump.deepest_m, bore_mm: pump.leastBore_m * 1000 } : {};
}
