// What the run has cost so far, in marks.

import { PRICE_marks } from '../materials/prices';
import { worked_s } from './daylight';
import { petrol_ratio } from './gear';
import type { Run } from './run';

export function costOf(run: Run): number {
  const { tick, pump, stocks, gear } = run.state;
  const crew = (worked_s(run.scenario, tick) / 3600) * run.kit.crew * PRICE_marks.crewPerHour;
  const petrol = (pump.running_s / 3600) * petrol_ratio(gear) * PRICE_marks.petrolPerHour;
  const additives =
    stocks.powderUsed_kg * PRICE_marks.polymerPerKg +
    stocks.bentoniteUsed_kg * PRICE_marks.bentonitePerKg +
    stocks.chlorineUsed_kg * PRICE_marks.chlorinePerKg;
  return crew + petrol + additives + stocks.waterUsed_L * PRICE_marks.waterPerL + stocks.wellSpent_marks;
}
