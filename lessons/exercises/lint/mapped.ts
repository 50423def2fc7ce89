// A task that stops now and then, with what it yields told in other words.

export function* mapped<From, To, Result>(
  task: Generator<From, Result>,
  told: (value: From) => To,
): Generator<To, Result> {
  for (;;) {
    const next = task.next();
    if (next.done) return next.value;
    yield told(next.value);
  }
}
