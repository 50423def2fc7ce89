// What the fluid in the suction chamber means for the mode of the fluid: how much was put in, how much of it works, how much is spoilt.

import { saltKeeps_frac } from '../fluid/bentonite';
import { BENTONITE, SOAKED, SOAKING, SWELLING } from '../fluid/substances';
import type { Signals } from '../machine/signals';
import { BENTONITE as BENTONITE_MUD } from '../materials/bentonite';
import { NATIVE_CLAY } from '../materials/nativeClay';
import { POLYMER } from '../materials/polymer';
import { readChamber } from '../pit/level';
import type { Run } from './run';

/** A trace below this, kg, is nothing. */
const TRACE_kg = 1e-6;

/** Additives are added up in working doses: so many g/L of each make one. Clay that was cut, not put in, makes no fluid of its own. */
export function readFluidSignals(run: Run, signals: Signals): void {
  const { pit, stocks, tasks, boundary } = run.state;
  const { chamberReading } = run.work;
  const { dissolved_kg } = pit.suction;
  readChamber(pit.suction, chamberReading);
  const clay = stocks.clayUsed_kg > 0;
  const ready = dissolved_kg[SOAKED] / POLYMER.workingDose_gL + dissolved_kg[BENTONITE] / BENTONITE_MUD.workingDose_gL;
  const coming = dissolved_kg[SOAKING] / POLYMER.workingDose_gL + dissolved_kg[SWELLING] / BENTONITE_MUD.workingDose_gL;
  const powder_kg = dissolved_kg[SOAKED] + dissolved_kg[SOAKING] + dissolved_kg[BENTONITE] + dissolved_kg[SWELLING];
  signals.powder = powder_kg > TRACE_kg || clay;
  signals.soaked_frac = powder_kg > TRACE_kg ? ready / (ready + coming) : 1;
  // Clay of the site works as soon as it is stirred in.
  if (clay && tasks.some((task) => task.word === 'nativeClay')) signals.soaked_frac = 0;
  signals.dose_ratio =
    chamberReading.soaked_gL / POLYMER.workingDose_gL +
    chamberReading.activeBentonite_gL / BENTONITE_MUD.workingDose_gL +
    (clay ? chamberReading.fines_frac / NATIVE_CLAY.working_frac : 0);
  const polymer = boundary.polymerIn_kg / POLYMER.workingDose_gL;
  const bentonite =
    (boundary.dissolvedIn_kg[BENTONITE] + boundary.dissolvedIn_kg[SWELLING]) / BENTONITE_MUD.workingDose_gL;
  const spoilt =
    boundary.polymerRotted_kg / POLYMER.workingDose_gL + bentonite * (1 - saltKeeps_frac(chamberReading.salt_gL));
  signals.rotted_frac = polymer + bentonite > 0 ? spoilt / (polymer + bentonite) : 0;
}
