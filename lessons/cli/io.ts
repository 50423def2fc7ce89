// What a verb may touch of the machine. Tests hand in their own.

export interface IO {
  out(text: string): void;
  err(text: string): void;
  /** Milliseconds of a clock that only goes forward. */
  now_ms(): number;
  /** Size in bytes, or null when there is no such file. */
  sizeOf(path: string): number | null;
  /** The text of a file; throws when it cannot be read. */
  read(path: string): string;
  /** Throws when it cannot be written. */
  write(path: string, text: string): void;
}

export const EXIT_DONE = 0;
export const EXIT_NOT_REPRODUCED = 1;
export const EXIT_NOT_FIT = 1;
export const EXIT_BAD_INPUT = 2;
