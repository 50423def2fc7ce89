// Supplies that come to an end are told once, in plain words.

import type { EventName } from './names';
import type { Run } from './run';
import type { OutTold } from './state';
import { tell } from './tell';

/** Less than this is none, in the unit of the stock: a wet bucket, the dust in a bag. */
const LEAST = 1e-6;

function watchOne(run: Run, left: number, stock: keyof OutTold, name: EventName): void {
  const { outTold } = run.state;
  const out = left <= LEAST;
  if (out && !outTold[stock]) tell(run, name, {});
  outTold[stock] = out;
}

export function watchStocks(run: Run): void {
  const { stocks } = run.state;
  watchOne(run, stocks.water_L, 'water', 'waterOut');
  watchOne(run, stocks.powder_kg, 'powder', 'powderOut');
  watchOne(run, stocks.petrol_L, 'petrol', 'petrolOut');
}
