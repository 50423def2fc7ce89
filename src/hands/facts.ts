// What a question says of a thing that is chosen in it, in the run's own figures: setting times, depths, bores.
import { SEALS, WELL_PUMPS, type SealName, type WellPumpName } from '$sim';
import type { SlotData } from '../words';
import type { AskValue } from './ask';

export function factsOf(chosen: AskValue): SlotData {
  const seal = SEALS[chosen as SealName] as (typeof SEALS)[SealName] | undefined;
  if (seal) return { ready_s: seal.ready_s };
  const pump = WELL_PUMPS[chosen as WellPumpName] as (typeof WELL_PUMPS)[WellPumpName] | undefined;
  return pump ? { deepest_m: pump.deepest_m, bore_mm: pump.leastBore_m * 1000 } : {};
}
