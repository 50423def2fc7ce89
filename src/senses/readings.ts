// What each sense says now, as message keys: one word, one small line, one whole sentence. Reads Senses and nothing else.
import { SIZE_CLASSES, type Senses } from '$sim';
import type { KeyedMessage } from '../words';
import type { WellSenseId } from './wellReadings';

export const SENSE_IDS = ['returns', 'fluid', 'sound', 'rope', 'pit', 'pump'] as const;
export type SenseId = (typeof SENSE_IDS)[number];

export interface Reading {
  readonly id: SenseId | WellSenseId;
  readonly word: KeyedMessage;
  readonly detail: KeyedMessage;
  readonly sentence: KeyedMessage;
  /** A second sentence, where there is something more to say. */
  readonly more?: KeyedMessage;
  /** A sign that nobody on site would overlook. */
  readonly alarming: boolean;
}

export type ShareWord = 'full' | 'most' | 'half' | 'little' | 'none';

/** How a crew would say what part of the flow comes back. */
export function shareWord(share_frac: number): ShareWord {
  if (share_frac >= 0.9) return 'full';
  if (share_frac >= 0.65) return 'most';
  if (share_frac >= 0.35) return 'half';
  return share_frac >= 0.06 ? 'little' : 'none';
}

export type GritWord = 'clean' | 'trace' | 'sandy' | 'thick';

/** Sand in the returns, in a word. */
export function gritWord(cloudiness_frac: number): GritWord {
  if (cloudiness_frac < 0.06) return 'clean';
  if (cloudiness_frac < 0.25) return 'trace';
  return cloudiness_frac < 0.6 ? 'sandy' : 'thick';
}

export type MurkWord = 'clear' | 'cloudy' | 'muddy';

/** Silt and clay in the returns, in a word. */
export function murkWord(murk_frac: number): MurkWord {
  if (murk_frac < 0.06) return 'clear';
  return murk_frac < 0.4 ? 'cloudy' : 'muddy';
}

export function readingsOf(senses: Senses): Reading[] {
  return [returns(senses), fluid(senses), sound(senses), rope(senses), pit(senses), pump(senses)];
}

function returns({ returns: seen, mouth }: Senses): Reading {
  if (!seen.running)
    return {
      id: 'returns',
      word: { key: 'work.returns.none' },
      detail: { key: `work.mouth.${mouth.look}` },
      sentence: { key: 'work.returns.sentenceNone' },
      more: { key: `work.mouth.sentence.${mouth.look}` },
      alarming: mouth.look === 'gone',
    };
  const grit = gritWord(seen.cloudiness_frac);
  const murk = murkWord(seen.murk_frac);
  const share = shareWord(seen.share_frac);
  // Fluid that goes missing is what a crew would say first.
  const lost = share === 'half' || share === 'little' || share === 'none';
  const data = {
    grit: `work.grit.${grit}`,
    colour: `work.colour.${seen.colour}`,
    share: `work.share.${share}`,
    whole: `work.share.whole.${share}`,
  };
  return {
    id: 'returns',
    word: { key: lost ? data.share : `work.returns.${grit}` },
    detail: { key: `work.returns.detail.${share === 'full' || lost ? murk : `${murk}Share`}`, data },
    sentence: { key: `work.returns.sentence.${murk}`, data },
    alarming: false,
  };
}

/** The size classes seen in the returns, coarsest last. */
export function grainsSeen(senses: Senses): { size: string; amount: string }[] {
  return senses.returns.grains
    .filter((glance) => glance.amount !== 'none')
    .map((glance) => ({ size: SIZE_CLASSES[glance.classIndex]!.id, amount: glance.amount }));
}

function fluid({ feel, funnel, time_s }: Senses): Reading {
  if (!feel)
    return {
      id: 'fluid',
      word: { key: 'work.feel.none' },
      detail: funnel ? { key: 'work.feel.funnel', data: { seconds_s: funnel.seconds_s } } : { key: 'work.feel.ask' },
      sentence: { key: 'work.feel.sentenceNone' },
      alarming: false,
    };
  const word = `work.feel.${feel.word}`;
  const ago_s = time_s - feel.time_s;
  return {
    id: 'fluid',
    word: { key: word },
    detail: ago_s < 60 ? { key: 'work.feel.now' } : { key: 'work.feel.ago', data: { ago_s: wholeMinutes(ago_s) } },
    sentence: funnel
      ? { key: 'work.feel.sentenceFunnel', data: { word, seconds_s: funnel.seconds_s } }
      : { key: 'work.feel.sentence', data: { word } },
    ...(feel.salty ? { more: { key: 'work.feel.salty' } } : {}),
    alarming: false,
  };
}

function sound({ stem }: Senses): Reading {
  // What is about to stop the work is the word; else what the bit sounds like.
  const loud = stem.drive === 'hot' || stem.drive === 'tripped';
  const turning = stem.turning ? 'work.sound.turning' : 'work.sound.standing';
  return {
    id: 'sound',
    word: { key: loud ? `work.drive.word.${stem.drive}` : `work.sound.${stem.sound}` },
    // A drive that gets hot is told before the stem's turning, which the crew's line tells too.
    detail: { key: stem.drive !== 'cool' ? `work.drive.${stem.drive}` : turning },
    sentence: { key: `work.sound.sentence.${stem.sound}` },
    ...(stem.drive !== 'cool' ? { more: { key: `work.drive.sentence.${stem.drive}` } } : {}),
    alarming: stem.drive === 'tripped',
  };
}

/** Below this the eye cannot tell a stem from a standing one, m/min. */
const SEEN_SINKING_mmin = 0.01;

function rope({ stem }: Senses): Reading {
  const pulls = stem.pull !== 'normal';
  const sinks = stem.sinking_mmin >= SEEN_SINKING_mmin;
  const data = { torque: `work.torque.${stem.torque}`, pull: `work.pull.${stem.pull}` };
  const rate_cmmin = stem.sinking_mmin * 100;
  return {
    id: 'rope',
    word: { key: pulls ? data.pull : data.torque },
    detail: sinks ? { key: 'work.rope.sinking', data: { rate_cmmin } } : { key: 'work.rope.still' },
    sentence: sinks
      ? { key: 'work.rope.sentenceSinking', data: { ...data, rate_cmmin } }
      : { key: 'work.rope.sentenceStill', data },
    alarming: stem.pull === 'stuck' || stem.torque === 'stalled',
  };
}

function pit({ pit: seen, stick, time_s }: Senses): Reading {
  const look = `work.pit.${seen.look}`;
  const heap = `work.heap.${seen.heap}`;
  return {
    id: 'pit',
    word: { key: look },
    detail: stick
      ? { key: 'work.pit.stick', data: { level_cm: stick.level_m * 100 } }
      : { key: `work.pit.heap.${seen.heap}` },
    sentence: stick
      ? {
          key: 'work.pit.sentenceStick',
          data: { look, heap, level_cm: stick.level_m * 100, ago_s: wholeMinutes(time_s - stick.time_s) },
        }
      : { key: 'work.pit.sentence', data: { look, heap } },
    alarming: seen.look === 'empty',
  };
}

function pump({ pump: heard }: Senses): Reading {
  // What is broken is the word; else how it sounds.
  const look = heard.dead ? 'dead' : heard.hose === 'whole' ? heard.sound : heard.hose;
  return {
    id: 'pump',
    word: { key: `work.pump.${look}` },
    detail:
      heard.throttle_frac > 0
        ? { key: 'work.pump.throttle', data: { share: heard.throttle_frac } }
        : { key: heard.primed ? 'work.pump.primed' : 'work.pump.dry' },
    sentence: { key: `work.pump.sentence.${look}` },
    alarming: look === 'dead' || look === 'sprays' || heard.sound === 'gulping' || heard.sound === 'racing',
  };
}

/** Ages are said in whole minutes once they are that long, so that the line does not flicker. */
function wholeMinutes(time_s: number): number {
  return time_s < 60 ? Math.max(0, Math.round(time_s)) : Math.floor(time_s / 60) * 60;
}
