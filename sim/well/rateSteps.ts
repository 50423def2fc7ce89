// What a well has given so far, as steps of rate: enough to know how far the water is down, in an array that never grows.

/** Plain data: step i runs from from_s[i] to the next one, the last until now. Times rise strictly. */
export interface RateSteps {
  count: number;
  from_s: Float64Array;
  rate_m3s: Float64Array;
}

/** Steps of rate kept. ASSUMED: enough that a test of a day, second by second, is off by less than a hundredth. */
export const RATE_STEPS = 48;

export const createRateSteps = (): RateSteps => ({
  count: 0,
  from_s: new Float64Array(RATE_STEPS),
  rate_m3s: new Float64Array(RATE_STEPS),
});

/**
 * From time_s on the well gives rate_m3s (0: rest; negative: it is being filled). A rate like the last one makes no new step.
 * Where the array is full, two neighbours become one with their mean rate: no volume is lost. Those are taken whose change is small and
 * long ago: least |dQ| x span/age. Allocates nothing. Throws RangeError when time runs backwards.
 */
export function recordRate(steps: RateSteps, time_s: number, rate_m3s: number): void {
  const { from_s, rate_m3s: rates } = steps;
  const last = steps.count - 1;
  if (last >= 0) {
    if (time_s < from_s[last]) throw new RangeError(`A rate at ${time_s} s after one at ${from_s[last]} s.`);
    if (rates[last] === rate_m3s) return;
    if (time_s === from_s[last]) {
      rates[last] = rate_m3s;
      return;
    }
  } else if (rate_m3s === 0) return;
  if (steps.count === from_s.length) mergeOldest(steps, time_s);
  from_s[steps.count] = time_s;
  rates[steps.count] = rate_m3s;
  steps.count++;
}

function mergeOldest(steps: RateSteps, now_s: number): void {
  const { from_s, rate_m3s: rates, count } = steps;
  let best = 0;
  let least = Infinity;
  for (let i = 0; i < count - 1; i++) {
    const end_s = i + 2 < count ? from_s[i + 2] : now_s;
    const cost = (Math.abs(rates[i + 1] - rates[i]) * (end_s - from_s[i])) / (now_s - from_s[i]);
    if (cost < least) {
      least = cost;
      best = i;
    }
  }
  const end_s = best + 2 < count ? from_s[best + 2] : now_s;
  const middle_s = from_s[best + 1];
  const given_m3 = rates[best] * (middle_s - from_s[best]) + rates[best + 1] * (end_s - middle_s);
  rates[best] = given_m3 / (end_s - from_s[best]);
  for (let i = best + 1; i < count - 1; i++) {
    from_s[i] = from_s[i + 1];
    rates[i] = rates[i + 1];
  }
  steps.count--;
}
