// The classes whose results are on the board: T-07 of one is somebody else than T-07 of another, so one class is shown at a time.

export interface ClassHere {
  /** null: played without a class code. */
  readonly code: string | null;
  readonly count: number;
}

/** The largest first. */
export function classesOf(codes: readonly (string | null)[]): ClassHere[] {
  const counts = new Map<string | null, number>();
  for (const code of codes) counts.set(code, (counts.get(code) ?? 0) + 1);
  return [...counts].map(([code, count]) => ({ code, count })).sort((a, b) => b.count - a.count);
}

/** The one to show: as chosen, else the one that is taught now, else the largest. */
export function shownClass(
  classes: readonly ClassHere[],
  chosen: string | null | undefined,
  taught: string | null,
): string | null {
  const here = (code: string | null | undefined): code is string | null => classes.some((one) => one.code === code);
  if (here(chosen)) return chosen;
  return here(taught) ? taught : (classes[0]?.code ?? null);
}
