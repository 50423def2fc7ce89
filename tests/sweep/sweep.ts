// What a sweep is: many tasks that stand alone, and the claims that their results must bear out.

export interface Claim {
  /** A sentence with the counts in it, such as '49 of 50 careful runs score 80 or more (wanted: 45)'. */
  readonly text: string;
  readonly holds: boolean;
}

/** Tasks and results cross between threads: plain data only. */
export interface Sweep<Task, Result> {
  readonly title: string;
  tasks(): Task[];
  run(task: Task): Result | Promise<Result>;
  judge(done: { readonly task: Task; readonly result: Result }[]): Claim[];
  /** Counts that the report shows without judging them, one line each. */
  notes?(done: { readonly task: Task; readonly result: Result }[]): string[];
}
