// Supplies that come to an end are told once, in plain words.

import type { EventName } from './names';
import type { Run } from './run';
import type { Stocks } from './state';
import { tell } from './tell';

type Told = 'waterTold' | 'powderTold' | 'petrolTold';

/** Less than this is none, in the unit of the stock: a wet bucket, the dust in a bag. */
const LEAST = 1e-6;

function watchOne(run: Run, left: number, told: Told, name: EventName): void {
  const stocks: Stocks = run.state.stocks;
  const out = left <= LEAST;
  if (out && !stocks[told]) tell(run, name, {});
  stocks[told] = out;
}

export function watchStocks(run: Run): void {
  const { stocks } = run.state;
  watchOne(run, stocks.water_L, 'waterTold', 'waterOut');
  watchOne(run, stocks.powder_kg, 'powderTold', 'powderOut');
  watchOne(run, stocks.petrol_L, 'petrolTold', 'petrolOut');
}
