// The gear in force: the kit of the scenario with the bit and the drilling pump that were chosen when setting out.

import { DRILLING_PUMPS, type DrillingPumpName } from '../materials/drillingPumps';
import type { Kit } from '../materials/kit';
import type { RefusalKey } from './names';
import type { Scenario } from './scenario';
import type { Gear } from './state';

/** What a run begins with: the bit and the pump of the kit. */
export const firstGear = ({ kit }: Scenario): Gear => ({ bit_m: kit.bit_m, pump: '' });

/** The kit that the crew works with. */
export function kitInForce({ kit }: Scenario, { bit_m, pump }: Gear): Kit {
  if (pump === '') return bit_m === kit.bit_m ? kit : { ...kit, bit_m };
  const { shutOff_m, free_m3s } = DRILLING_PUMPS[pump];
  return { ...kit, bit_m, shutOff_m, free_m3s };
}

/** Petrol of the pump in force beside that of the kit's own. */
export const petrol_ratio = ({ pump }: Gear): number => (pump === '' ? 1 : DRILLING_PUMPS[pump].petrol_ratio);

/** Only what lies on the cart can be chosen. A field left out takes the gear of the kit. */
export function gearRefusal(
  { well }: Scenario,
  bit_mm?: number | null,
  pump?: DrillingPumpName | null,
): RefusalKey | null {
  if (typeof bit_mm === 'number' && !well?.bits_mm.includes(bit_mm)) return 'notOffered';
  return typeof pump === 'string' && !well?.pumps.includes(pump) ? 'notOffered' : null;
}
