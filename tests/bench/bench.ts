// What a bench is: a name, a sentence, and rows of measured values.

export interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
}

export interface Bench {
  readonly title: string;
  run(): Row[] | Promise<Row[]>;
}

/** The middle one of several runs' times, in seconds: one run that the computer interrupted does not show. */
export function medianTime_s(runs: number, run: () => void): number {
  const times_s = Array.from({ length: runs }, () => {
    const start_ms = performance.now();
    run();
    return (performance.now() - start_ms) / 1000;
  }).sort((a, b) => a - b);
  return times_s[Math.floor(runs / 2)];
}
