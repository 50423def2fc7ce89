// The player on a stand-in for the browser's audio: what is begun, tuned, ended, and that nothing is left behind.
import { describe, expect, it } from 'vitest';
import { Player } from '../../../src/sound/player';
import type { Voice } from '../../../src/sound/voices';

class Param {
  value = 0;
  readonly aims: { value: number; at_s: number; constant_s: number }[] = [];
  setTargetAtTime(value: number, at_s: number, constant_s: number): void {
    this.aims.push({ value, at_s, constant_s });
  }
  get aim(): number | undefined {
    return this.aims.at(-1)?.value;
  }
}

class Part {
  readonly gain = new Param();
  readonly Q = new Param();
  frequency: Param | undefined;
  type = '';
  loop = false;
  to: unknown[] = [];
  started = 0;
  stopAt_s: number | null = null;
  onended: (() => void) | null = null;
  constructor(readonly kind: string) {
    if (kind === 'noise') Object.assign(this, { buffer: null });
    else this.frequency = new Param();
    if (kind === 'noise') delete this.frequency;
  }
  connect<To>(to: To): To {
    this.to.push(to);
    return to;
  }
  disconnect(): void {
    this.to = [];
  }
  start(): void {
    this.started++;
  }
  stop(at_s: number): void {
    this.stopAt_s = at_s;
  }
}

class StandIn {
  currentTime = 0;
  state = 'running';
  sampleRate = 44_100;
  readonly destination = {};
  readonly parts: Part[] = [];
  #made(kind: string): Part {
    const part = new Part(kind);
    this.parts.push(part);
    return part;
  }
  createGain = (): Part => this.#made('gain');
  createOscillator = (): Part => this.#made('tone');
  createBufferSource = (): Part => this.#made('noise');
  createBiquadFilter = (): Part => this.#made('filter');
  createBuffer = (_channels: number, length: number): { getChannelData: () => Float32Array; samples: Float32Array } => {
    const samples = new Float32Array(length);
    return { getChannelData: () => samples, samples };
  };
  resume = async (): Promise<void> => void (this.state = 'running');
  suspend = async (): Promise<void> => void (this.state = 'suspended');
  close = async (): Promise<void> => void (this.state = 'closed');
  of = (kind: string): Part[] => this.parts.filter((part) => part.kind === kind);
}

const ENGINE: Voice = {
  name: 'engine',
  source: 'tone',
  level_frac: 0.5,
  pitch_Hz: 80,
  rough_frac: 0.4,
  beat_Hz: 10,
  struck: false,
  glide_s: 0.1,
};
const BIT: Voice = { ...ENGINE, name: 'bit', source: 'noise', pitch_Hz: 4000 };

function newPlayer() {
  const context = new StandIn();
  return { context, player: new Player(context as unknown as AudioContext) };
}

describe('the player', () => {
  it('is silent until it is given a voice', () => {
    const { context, player } = newPlayer();
    player.play([], 1);
    expect(player.sounding).toEqual([]);
    expect(context.of('tone')).toEqual([]);
  });

  it('begins a voice once, with its pitch and level, and tunes it afterwards', () => {
    const { context, player } = newPlayer();
    player.play([ENGINE], 1);
    const [source] = context.of('tone');
    expect(source!.started).toBe(1);
    expect(source!.frequency!.aim).toBe(80);
    player.play([{ ...ENGINE, pitch_Hz: 120 }], 1);
    expect(player.sounding).toEqual(['engine']);
    expect(context.of('tone')).toHaveLength(2); // the tone itself and its swing
    expect(source!.frequency!.aim).toBe(120);
  });

  it('is not told the same twice', () => {
    const { context, player } = newPlayer();
    for (let i = 0; i < 5; i++) player.play([{ ...ENGINE }], 1);
    expect(context.of('tone')[0]!.frequency!.aims).toHaveLength(1);
  });

  it('makes noise audible in a band round its pitch', () => {
    const { context, player } = newPlayer();
    player.play([BIT], 1);
    const [noise] = context.of('noise');
    expect(noise!.loop).toBe(true);
    const [filter] = context.of('filter');
    expect(filter!.type).toBe('bandpass');
    expect(filter!.frequency!.aim).toBe(4000);
    expect(noise!.to).toEqual([filter]);
  });

  it('fades what it is not given any more, stops it, and takes its parts away', () => {
    const { context, player } = newPlayer();
    player.play([ENGINE, BIT], 1);
    context.currentTime = 3;
    player.play([BIT], 1);
    expect(player.sounding).toEqual(['bit']);
    const [source, beat] = context.of('tone');
    expect(source!.stopAt_s).toBeGreaterThan(3);
    expect(source!.stopAt_s).toBeLessThan(4);
    expect(beat!.stopAt_s).toBe(source!.stopAt_s);
    const out = context.of('gain').find((part) => part.gain.aim === 0)!;
    source!.onended!();
    expect(out.to).toEqual([]);
  });

  it('lets a dying voice sink as slowly as it is told, and does not begin one only to end it', () => {
    const dead: Voice = { ...ENGINE, level_frac: 0, pitch_Hz: 20, glide_s: 1.5 };
    const { context, player } = newPlayer();
    player.play([dead], 1);
    expect(context.of('tone')).toEqual([]);
    player.play([ENGINE], 1);
    player.play([dead], 1);
    const [source] = context.of('tone');
    expect(player.sounding).toEqual([]);
    expect(source!.frequency!.aim).toBe(20);
    expect(source!.stopAt_s).toBeGreaterThan(1.5);
  });

  it('is as loud as the volume says', () => {
    const { context, player } = newPlayer();
    player.play([ENGINE], 0.2);
    const all = context.of('gain')[0]!;
    const quiet = all.gain.aim!;
    player.play([ENGINE], 1);
    expect(all.gain.aim).toBeCloseTo(5 * quiet);
    expect(all.gain.aim).toBeLessThanOrEqual(1);
  });

  it('rests, wakes, and ends for good with nothing sounding', async () => {
    const { context, player } = newPlayer();
    player.play([ENGINE], 1);
    await player.rest();
    expect(context.state).toBe('suspended');
    await player.wake();
    expect(context.state).toBe('running');
    await player.close();
    expect(player.sounding).toEqual([]);
    expect(context.state).toBe('closed');
  });

  it('goes on in silence where the browser does not let it wake', async () => {
    const { context, player } = newPlayer();
    context.state = 'suspended';
    context.resume = () => Promise.reject(new Error('not allowed'));
    await expect(player.wake()).resolves.toBeUndefined();
  });
});
