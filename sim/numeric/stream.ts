// Seeded chance: one named stream per use, whose state is plain JSON and lives in the snapshot.
import alea from 'seedrandom/lib/alea.js';
import { ln } from './functions';

/** The generator's four numbers, and the second draw of the last normal pair if it is still unused. */
export interface StreamState {
  c: number;
  s0: number;
  s1: number;
  s2: number;
  spare: number | null;
}

export interface Stream {
  /** Evenly spread, 0 <= u < 1. */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
  /** A copy of the state, plain JSON. */
  state(): StreamState;
}

function streamOf(draw: ReturnType<typeof alea>, spareDraw: number | null): Stream {
  let spare = spareDraw;
  return {
    uniform: () => draw(),
    // Polar method of Marsaglia: only ln and sqrt, so the same bits everywhere.
    normal() {
      if (spare !== null) {
        const kept = spare;
        spare = null;
        return kept;
      }
      for (;;) {
        const u = 2 * draw() - 1;
        const v = 2 * draw() - 1;
        const s = u * u + v * v;
        if (s > 0 && s < 1) {
          const stretch = Math.sqrt((-2 * ln(s)) / s);
          spare = v * stretch;
          return u * stretch;
        }
      }
    },
    state: () => ({ ...draw.state(), spare }),
  };
}

/** A new stream. The same text always gives the same draws; use a name and the seed, such as 'ground/7'. */
export function createStream(seedText: string): Stream {
  return streamOf(alea(seedText, { state: true }), null);
}

/** A stream that goes on exactly where the saved one stood. */
export function restoreStream(state: StreamState): Stream {
  const { c, s0, s1, s2, spare } = state;
  return streamOf(alea('', { state: { c, s0, s1, s2 } }), spare);
}
