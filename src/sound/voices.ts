// Which sounds the crew hears now, as plain data. Reads Senses and nothing else, and only those senses that the screen shows.
import type { Senses } from '$sim';
import type { SenseId } from '../senses/readings';

export type VoiceName = 'engine' | 'air' | 'spray' | 'bit' | 'drive' | 'water';

/** The sense whose card says the same in words: no sound is the only sign of anything. */
export const CARRIED_BY: Readonly<Record<VoiceName, SenseId>> = {
  engine: 'pump',
  air: 'pump',
  spray: 'pump',
  bit: 'sound',
  drive: 'rope',
  water: 'returns',
};

export interface Voice {
  readonly name: VoiceName;
  /** A tone has a pitch; of noise only a band round the pitch is heard. */
  readonly source: 'tone' | 'noise';
  /** 0 silent, 1 as loud as any. */
  readonly level_frac: number;
  readonly pitch_Hz: number;
  /** How deep its loudness swings, 0 even, 1 down to silence, and how often. */
  readonly rough_frac: number;
  readonly beat_Hz: number;
  /** Each beat begins at its loudest and dies away, as a blow does; else it swells and falls. */
  readonly struck: boolean;
  /** Time in which it comes to this level and pitch, s. */
  readonly glide_s: number;
}

type Tuned = Omit<Voice, 'name'>;
type Setting = Omit<Tuned, 'source' | 'glide_s' | 'struck'> & { readonly struck?: boolean };

/** All figures of this file are ASSUMED: set apart in pitch, band and beat, so that a small loudspeaker can tell them apart. */
const SWIFT_s = 0.15;
const DYING_s = 1.5;

/** The engine turns faster with the throttle, faster still without a load, slower under one. */
const IDLE_Hz = 55;
const WIDE_OPEN_Hz = 110;
const STRAIN = {
  steady: { pitch_frac: 1, rough_frac: 0.15, beat_Hz: 11 },
  labouring: { pitch_frac: 0.75, rough_frac: 0.6, beat_Hz: 7 },
  racing: { pitch_frac: 1.5, rough_frac: 0.05, beat_Hz: 15 },
  gulping: { pitch_frac: 1.15, rough_frac: 0.7, beat_Hz: 3 },
} as const;

const AIR = {
  gulping: { level_frac: 0.55, pitch_Hz: 420, rough_frac: 1, beat_Hz: 3 },
  racing: { level_frac: 0.35, pitch_Hz: 1700, rough_frac: 0.3, beat_Hz: 6 },
} as const;

/** Sand hisses, coarse sand grinds, stones knock; clay, dull and slow, and a bit off the bottom are barely heard. */
const BIT = {
  quiet: { level_frac: 0.08, pitch_Hz: 500, rough_frac: 0.2, beat_Hz: 2 },
  hiss: { level_frac: 0.45, pitch_Hz: 4200, rough_frac: 0.2, beat_Hz: 5 },
  grind: { level_frac: 0.5, pitch_Hz: 1500, rough_frac: 0.5, beat_Hz: 9 },
  knock: { level_frac: 0.7, pitch_Hz: 260, rough_frac: 1, beat_Hz: 4, struck: true },
  sticky: { level_frac: 0.12, pitch_Hz: 170, rough_frac: 0.4, beat_Hz: 1.2 },
} as const;

const DRIVE = {
  firm: { level_frac: 0.1, pitch_Hz: 160, rough_frac: 0.1, beat_Hz: 4 },
  heavy: { level_frac: 0.25, pitch_Hz: 125, rough_frac: 0.3, beat_Hz: 5 },
  stalled: { level_frac: 0.45, pitch_Hz: 85, rough_frac: 0.6, beat_Hz: 8 },
} as const;

const SPRAY = { level_frac: 0.4, pitch_Hz: 2600, rough_frac: 0.1, beat_Hz: 8 } as const;

/** Water that falls into the pit: clear it splashes, thick it drops dull. */
const SPLASH_Hz = 1100;
const DULLED_Hz = 500;
const FALL_frac = 0.32;

const tone = (set: Setting): Tuned => ({ source: 'tone', glide_s: SWIFT_s, struck: false, ...set });
const noise = (set: Setting): Tuned => ({ source: 'noise', glide_s: SWIFT_s, struck: false, ...set });

/** The sounds of this moment, of the senses shown. What is not in the list is silent. */
export function voicesOf(senses: Senses, shown: readonly string[]): Voice[] {
  const all: Record<VoiceName, Tuned | null> = {
    engine: engine(senses),
    air: air(senses),
    spray: senses.pump.hose === 'sprays' ? noise(SPRAY) : null,
    bit: senses.stem.sound === 'still' ? null : noise(BIT[senses.stem.sound]),
    drive: drive(senses),
    water: water(senses),
  };
  const voices: Voice[] = [];
  for (const name of Object.keys(all) as VoiceName[]) {
    const tuned = all[name];
    if (tuned && shown.includes(CARRIED_BY[name])) voices.push({ name, ...tuned });
  }
  return voices;
}

/** An engine that has died sinks in pitch until nothing is left; one that was stopped is simply not there. */
function engine({ pump }: Senses): Tuned | null {
  if (pump.dead)
    return { ...tone({ level_frac: 0, pitch_Hz: IDLE_Hz / 3, rough_frac: 0.9, beat_Hz: 4 }), glide_s: DYING_s };
  if (pump.sound === 'off') return null;
  const { pitch_frac, rough_frac, beat_Hz } = STRAIN[pump.sound];
  const pitch_Hz = (IDLE_Hz + (WIDE_OPEN_Hz - IDLE_Hz) * pump.throttle_frac) * pitch_frac;
  return tone({ level_frac: 0.3 + 0.3 * pump.throttle_frac, pitch_Hz, rough_frac, beat_Hz });
}

/** Air drawn in: gulps in the suction, or the dry rush of a pump that has lost its water. */
function air({ pump }: Senses): Tuned | null {
  return pump.sound === 'gulping' || pump.sound === 'racing' ? noise(AIR[pump.sound]) : null;
}

function drive({ stem }: Senses): Tuned | null {
  if (!stem.turning || stem.torque === 'free' || stem.torque === 'light') return null;
  return tone(DRIVE[stem.torque]);
}

function water({ returns }: Senses): Tuned | null {
  if (!returns.running || returns.share_frac <= 0) return null;
  return noise({
    level_frac: FALL_frac * returns.share_frac,
    pitch_Hz: SPLASH_Hz - (SPLASH_Hz - DULLED_Hz) * returns.murk_frac,
    rough_frac: 0.25,
    beat_Hz: 4,
  });
}
