// Voices played into a buffer by the player itself, to be measured: what a loudspeaker would be given.
import { Player } from '../../src/sound/player';
import type { Voice } from '../../src/sound/voices';

const RATE_Hz = 44_100;
const PLAYED_s = 3;
/** The beginning fades in. */
const FROM_s = 0.5;

export interface Measured {
  readonly peak: number;
  /** Effective value. */
  readonly level: number;
}

export async function measure(voices: readonly Voice[]): Promise<Measured> {
  const context = new OfflineAudioContext(1, RATE_Hz * PLAYED_s, RATE_Hz);
  new Player(context as unknown as AudioContext).play(voices, 1);
  const samples = (await context.startRendering()).getChannelData(0).subarray(RATE_Hz * FROM_s);
  let peak = 0;
  let squares = 0;
  for (const sample of samples) {
    peak = Math.max(peak, Math.abs(sample));
    squares += sample * sample;
  }
  return { peak, level: Math.sqrt(squares / samples.length) };
}
