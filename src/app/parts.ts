// Long work in the page, done in parts so that it stays alive: it draws, it listens, and goes on.

/** Job seconds that are played between two looks at the clock. */
export const LOOK_s = 20;

/** The page is held up so long at a time, ms. */
const PART_ms = 16;

/** Lets the page draw and listen before it goes on. */
export const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Runs a task that stops now and then to its end, and gives back what it comes to. Before each rest `onRest` is called. */
export async function inParts<Result>(task: Generator<unknown, Result>, onRest?: () => void): Promise<Result> {
  for (;;) {
    const until_ms = performance.now() + PART_ms;
    do {
      const { done, value } = task.next();
      if (done) return value as Result;
    } while (performance.now() < until_ms);
    onRest?.();
    await breath();
  }
}
