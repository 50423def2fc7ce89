// The search for a flow: losses grow nearly as its square, so that a few steps do.

const MOST_STEPS = 100;

/**
 * Flow, m3/s, at which surplus(flow) is 0. surplus falls steadily from atRest > 0 at no flow to below 0 at most_m3s.
 * warm_m3s: a first try (half of the most when out of range). Stops when the next step is shorter than tolerance_m3s.
 * Secants in the square of the flow, in which the losses of turbulent flow are all but straight, the first one from the
 * point at rest; halving whenever a step leaves the bracket. Worked value: 1 - Q^2, at most 2, from 1.5 -> 1.
 */
export function flowThatSpends(
  surplus: (flow_m3s: number) => number,
  atRest: number,
  most_m3s: number,
  warm_m3s: number,
  tolerance_m3s: number,
): number {
  let low = 0;
  let high = most_m3s;
  let flow = warm_m3s > 0 && warm_m3s < most_m3s ? warm_m3s : most_m3s / 2;
  let lastSquare = 0;
  let last = atRest;
  for (let step = 0; step < MOST_STEPS; step++) {
    const here = surplus(flow);
    if (here === 0) return flow;
    if (here > 0) low = flow;
    else high = flow;
    const square = flow * flow;
    const next = Math.sqrt(Math.max(0, square - (here * (square - lastSquare)) / (here - last)));
    // Past the usual number of steps every fourth one halves, so that no curve can stall the search.
    const kept = next > low && next < high && !(step > 8 && (step & 3) === 3) ? next : (low + high) / 2;
    if (Math.abs(kept - flow) < tolerance_m3s) return kept;
    lastSquare = square;
    last = here;
    flow = kept;
  }
  return flow;
}
