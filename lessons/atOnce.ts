// Runs a task that stops now and then to its end without a pause.

export function atOnce<Result>(task: Generator<unknown, Result>): Result {
  for (;;) {
    const { done, value } = task.next();
    if (done) return value as Result;
  }
}
