// What a crew knows of the well under way, as message keys: casing, fill, seals, the jar, the dipped level, the yield test.
import { SEALS, type Senses } from '$sim';
import type { KeyedMessage } from '../words';
import type { Reading } from './readings';

export const WELL_SENSE_IDS = ['casing', 'annulus', 'seal', 'jar', 'dip', 'test'] as const;
export type WellSenseId = (typeof WELL_SENSE_IDS)[number];

type Well = NonNullable<Senses['well']>;

export function wellReadingsOf({ well, time_s }: Senses): Reading[] {
  if (!well) return [];
  return [casing(well), annulus(well, time_s), seal(well), jar(well, time_s), dip(well, time_s), test(well)];
}

/** Ages in whole minutes, so that the line does not flicker. */
const age_s = (time_s: number): number => Math.max(0, Math.floor(time_s / 60) * 60);

function casing({ casing: seen }: Well): Reading {
  const { look, shoe_m, planned_m, joined, pieces } = seen;
  const down = shoe_m > 0;
  const data = { shoe_m, planned_m, joined, pieces };
  return {
    id: 'casing',
    word: { key: seen.snapped ? 'work.casing.snapped' : `work.casing.${look}` },
    detail: { key: down ? 'work.casing.shoe' : pieces > 0 ? 'work.casing.pieces' : 'work.casing.unplanned', data },
    sentence: { key: `work.casing.sentence.${look}`, data },
    ...(seen.snapped ? { more: { key: 'work.casing.sentence.snapped' } } : {}),
    alarming: seen.snapped || look === 'hung' || look === 'floating',
  };
}

function annulus({ poured, sounded }: Well, time_s: number): Reading {
  const volume_L = poured.reduce((sum, one) => sum + one.volume_L, 0);
  const put: KeyedMessage =
    volume_L > 0 ? { key: 'work.annulus.poured', data: { volume_L } } : { key: 'work.annulus.bare' };
  if (!sounded)
    return {
      id: 'annulus',
      word: { key: 'work.annulus.none' },
      detail: put,
      sentence: { key: volume_L > 0 ? 'work.annulus.sentencePoured' : 'work.annulus.sentenceNone', data: { volume_L } },
      alarming: false,
    };
  const data = { top_m: sounded.top_m, ago_s: age_s(time_s - sounded.time_s), volume_L };
  return {
    id: 'annulus',
    word: { key: 'work.annulus.top', data },
    detail: put,
    sentence: { key: 'work.annulus.sentence', data },
    alarming: false,
  };
}

function seal({ seals }: Well): Reading {
  const waiting = seals.filter((one) => !one.set);
  const last = waiting.at(-1) ?? seals.at(-1);
  if (!last)
    return {
      id: 'seal',
      word: { key: 'work.sealed.none' },
      detail: { key: 'work.sealed.noneYet' },
      sentence: { key: 'work.sealed.sentenceNone' },
      alarming: false,
    };
  const left_s = Math.max(60, Math.ceil((SEALS[last.seal].ready_s - last.since_s) / 60) * 60);
  const data = { seal: `work.seal.${last.seal}`, volume_L: last.volume_L, since_s: age_s(last.since_s), left_s };
  return {
    id: 'seal',
    word: { key: last.set ? 'work.sealed.set' : 'work.sealed.waits' },
    detail: last.set ? { key: 'work.sealed.which', data } : { key: 'work.sealed.left', data },
    sentence: { key: last.set ? 'work.sealed.sentenceSet' : 'work.sealed.sentenceWaits', data },
    alarming: false,
  };
}

function jar({ water }: Well, time_s: number): Reading {
  if (!water || water.jar === 'none')
    return {
      id: 'jar',
      word: { key: 'work.jar.none' },
      detail: { key: 'work.jar.ask' },
      sentence: { key: 'work.jar.sentence.none' },
      alarming: false,
    };
  const data = { sand: `work.jar.sand.${water.sand}`, ago_s: age_s(time_s - water.time_s) };
  return {
    id: 'jar',
    word: { key: `work.jar.${water.jar}` },
    detail: { key: data.sand },
    sentence: { key: `work.jar.sentence.${water.jar}`, data },
    more: { key: `work.jar.more.${water.sand}` },
    alarming: false,
  };
}

function dip({ dip: read, smellsOfChlorine }: Well, time_s: number): Reading {
  const smell: Partial<Reading> = smellsOfChlorine ? { more: { key: 'work.dip.smells' } } : {};
  if (!read)
    return {
      id: 'dip',
      word: { key: 'work.dip.none' },
      detail: { key: smellsOfChlorine ? 'work.dip.chlorine' : 'work.dip.ask' },
      sentence: { key: 'work.dip.sentenceNone' },
      ...smell,
      alarming: false,
    };
  const data = { level_m: read.level_m, ago_s: age_s(time_s - read.time_s) };
  return {
    id: 'dip',
    word: { key: 'work.dip.level', data },
    detail: smellsOfChlorine ? { key: 'work.dip.chlorine' } : { key: 'work.dip.ago', data },
    sentence: { key: 'work.dip.sentence', data },
    ...smell,
    alarming: false,
  };
}

function test({ test: read }: Well): Reading {
  if (!read)
    return {
      id: 'test',
      word: { key: 'work.test.none' },
      detail: { key: 'work.test.ask' },
      sentence: { key: 'work.test.sentenceNone' },
      alarming: false,
    };
  const row = read.rows.at(-1);
  const data = {
    rate_Lmin: row?.rate_Lmin ?? 0,
    level_m: row?.level_m ?? read.static_m,
    static_m: read.static_m,
    lowest_m: read.lowest_m,
    down_m: Math.max(0, read.lowest_m - read.static_m),
  };
  if (read.refusal !== null)
    return {
      id: 'test',
      word: { key: 'work.test.broken' },
      detail: { key: 'work.test.lowest', data },
      sentence: { key: `work.test.sentence.${read.refusal}`, data },
      alarming: true,
    };
  return {
    id: 'test',
    word: { key: read.over ? 'work.test.down' : 'work.test.runs', data },
    detail: { key: read.over ? 'work.test.lowest' : 'work.test.level', data },
    sentence: { key: read.over ? 'work.test.sentenceOver' : 'work.test.sentenceRuns', data },
    alarming: false,
  };
}
