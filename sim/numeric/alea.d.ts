// Types of the one generator file used, which seedrandom's own types do not cover.
declare module 'seedrandom/lib/alea.js' {
  interface AleaState {
    c: number;
    s0: number;
    s1: number;
    s2: number;
  }
  interface AleaDraw {
    (): number;
    state(): AleaState;
  }
  export default function alea(seed: string, options: { state: true | AleaState }): AleaDraw;
}
