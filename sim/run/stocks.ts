// Supplies that come to an end are told once, in plain words.

import type { EventName } from './names';
import type { Run } from './run';
import type { OutTold } from './state';
import { tell } from './tell';

/** Less than this is none: a wet bucket, the dust in a bag (the least that can be put in), the last drops. */
const LEAST_L = 1e-6;
const LEAST_kg = 0.01;

function watchOne(run: Run, out: boolean, stock: keyof OutTold, name: EventName): void {
  const { outTold } = run.state;
  if (out && !outTold[stock]) tell(run, name, {});
  outTold[stock] = out;
}

export function watchStocks(run: Run): void {
  const { stocks } = run.state;
  watchOne(run, stocks.water_L <= LEAST_L, 'water', 'waterOut');
  watchOne(run, stocks.powder_kg < LEAST_kg, 'powder', 'powderOut');
  watchOne(run, stocks.petrol_L <= LEAST_L, 'petrol', 'petrolOut');
}
