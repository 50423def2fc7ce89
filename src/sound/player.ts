// Makes the voices sound, by oscillators, noise and filters. It knows nothing of the work; what it is not given falls silent.
import type { Voice, VoiceName } from './voices';

/** A voice that is over is gone after this time, s. */
const FADE_s = 0.12;
/** An approach with this time constant is all but there after five of them. */
const CONSTANTS = 5;
/** Length of the noise that is played round and round, s. */
const NOISE_s = 2;
/** Partials of a tone up to this many times its pitch are let through: a phone's loudspeaker has no others. */
const PARTIALS = 9;
const NOISE_Q = 0.9;
/** Effective value of white noise between -1 and 1, and what noise of any band is brought to: a low, narrow band keeps so little that no one would hear it. */
const WHITE = 1 / Math.sqrt(3);
const NOISE = 0.25;
/** Highest peak of a voice at level 1: noise seldom passes four and a half times its effective value; a tone's filter lifts it a little. */
export const PEAK: Readonly<Record<Voice['source'], number>> = { noise: 4.5 * NOISE, tone: 1.15 };
/** All voices at their loudest come to no more than a loudspeaker bears: a sum above 1 would be cut off and rattle. */
export const TOGETHER_frac = 0.28;

interface Playing {
  readonly source: OscillatorNode | AudioBufferSourceNode;
  readonly pitch: AudioParam;
  readonly filter: BiquadFilterNode;
  readonly beat: OscillatorNode;
  readonly depth: GainNode;
  readonly even: GainNode;
  readonly out: GainNode;
  /** What it was last told: the same again is not told twice. */
  told: Voice | null;
}

export class Player {
  readonly #context: AudioContext;
  readonly #all: GainNode;
  readonly #noise: AudioBuffer;
  readonly #playing = new Map<VoiceName, Playing>();
  #volume_frac = 0;

  /** To be made while a press is being heard: browsers let no page sound by itself. */
  constructor(context: AudioContext) {
    this.#context = context;
    this.#all = context.createGain();
    this.#all.gain.value = 0;
    this.#all.connect(context.destination);
    this.#noise = noiseOf(context);
  }

  /** Names of the voices that sound now. */
  get sounding(): VoiceName[] {
    return [...this.#playing.keys()];
  }

  /** From now on these voices sound and no others. */
  play(voices: readonly Voice[], volume_frac: number): void {
    if (volume_frac !== this.#volume_frac) this.#to(this.#all.gain, volume_frac * TOGETHER_frac, FADE_s);
    this.#volume_frac = volume_frac;
    for (const name of this.sounding) if (!voices.some((voice) => voice.name === name)) this.#end(name, FADE_s);
    for (const voice of voices) {
      if (voice.level_frac <= 0 && !this.#playing.has(voice.name)) continue;
      this.#tune(this.#playing.get(voice.name) ?? this.#begin(voice), voice);
      if (voice.level_frac <= 0) this.#end(voice.name, voice.glide_s);
    }
  }

  /** A context that the browser put to sleep may wake at a press only; a refusal is no failure. */
  async wake(): Promise<void> {
    if (this.#context.state === 'suspended') await this.#context.resume().catch(() => undefined);
  }

  /** Gives the loudspeaker back until the next wake. */
  async rest(): Promise<void> {
    if (this.#context.state === 'running') await this.#context.suspend();
  }

  /** Ends for good, once the voices have faded. */
  async close(): Promise<void> {
    this.play([], 0);
    await new Promise((faded) => setTimeout(faded, FADE_s * 1000));
    await this.#context.close();
  }

  #begin({ name, source: kind, pitch_Hz, beat_Hz }: Voice): Playing {
    const context = this.#context;
    const filter = context.createBiquadFilter();
    filter.type = kind === 'tone' ? 'lowpass' : 'bandpass';
    filter.Q.value = NOISE_Q;
    const source = kind === 'tone' ? context.createOscillator() : context.createBufferSource();
    if ('buffer' in source) {
      source.buffer = this.#noise;
      source.loop = true;
    } else {
      source.type = 'sawtooth';
      source.frequency.value = pitch_Hz;
    }
    filter.frequency.value = kind === 'tone' ? pitch_Hz * PARTIALS : pitch_Hz;
    // The loudness swings about an even part: even + depth * beat.
    const beat = context.createOscillator();
    beat.frequency.value = beat_Hz;
    const depth = context.createGain();
    const even = context.createGain();
    const out = context.createGain();
    out.gain.value = 0;
    source.connect(filter).connect(even).connect(out).connect(this.#all);
    beat.connect(depth).connect(even.gain);
    source.start();
    beat.start();
    const pitch = 'frequency' in source ? source.frequency : filter.frequency;
    const playing: Playing = { source, pitch, filter, beat, depth, even, out, told: null };
    this.#playing.set(name, playing);
    return playing;
  }

  #tune(playing: Playing, voice: Voice): void {
    if (playing.told && sameVoice(playing.told, voice)) return;
    playing.told = voice;
    const { pitch, filter, beat, depth, even, out } = playing;
    const { pitch_Hz, rough_frac, beat_Hz, struck, glide_s } = voice;
    const level_frac = voice.source === 'noise' ? voice.level_frac * this.#evened(pitch_Hz) : voice.level_frac;
    this.#to(pitch, pitch_Hz, glide_s);
    if (voice.source === 'tone') this.#to(filter.frequency, pitch_Hz * PARTIALS, glide_s);
    this.#to(beat.frequency, beat_Hz, glide_s);
    // A saw turned over leaps up and falls off evenly.
    beat.type = struck ? 'sawtooth' : 'triangle';
    this.#to(depth.gain, (struck ? -rough_frac : rough_frac) / 2, glide_s);
    this.#to(even.gain, 1 - rough_frac / 2, glide_s);
    this.#to(out.gain, level_frac, glide_s);
  }

  /** How much a band of noise has to be raised: it keeps as much of the white noise's power as it is wide. */
  #evened(pitch_Hz: number): number {
    const kept_frac = Math.min(1, (Math.PI * pitch_Hz) / (NOISE_Q * this.#context.sampleRate));
    return NOISE / (WHITE * Math.sqrt(kept_frac));
  }

  #end(name: VoiceName, glide_s: number): void {
    const playing = this.#playing.get(name);
    if (!playing) return;
    this.#playing.delete(name);
    this.#to(playing.out.gain, 0, glide_s);
    const over_s = this.#context.currentTime + glide_s * 2;
    playing.source.onended = () => playing.out.disconnect();
    playing.source.stop(over_s);
    playing.beat.stop(over_s);
  }

  #to(param: AudioParam, value: number, glide_s: number): void {
    param.setTargetAtTime(value, this.#context.currentTime, glide_s / CONSTANTS);
  }
}

const SAID = ['level_frac', 'pitch_Hz', 'rough_frac', 'beat_Hz', 'struck'] as const;
const sameVoice = (one: Voice, other: Voice): boolean => SAID.every((figure) => one[figure] === other[figure]);

function noiseOf(context: AudioContext): AudioBuffer {
  const buffer = context.createBuffer(1, Math.round(NOISE_s * context.sampleRate), context.sampleRate);
  const samples = buffer.getChannelData(0);
  for (let i = 0; i < samples.length; i++) samples[i] = Math.random() * 2 - 1;
  return buffer;
}
