// The pictures that a clock ticks by: those of the screen, or a test's own.

export interface Frames {
  request(callback: (now_ms: number) => void): number;
  cancel(handle: number): void;
}

export const screenFrames: Frames = {
  request: (call) => requestAnimationFrame(call),
  cancel: (handle) => cancelAnimationFrame(handle),
};

/** Real time that one picture may spend on a wait at engine speed, so that the page stays alive. */
export const ENGINE_BUDGET_ms = 12;
