// The answer key in words: signs, water, neighbours, what goes wrong and when, what the careful crew did.
import type { RecordSheet } from '$lessons';
import { whoWords } from '../../../app/who';
import type { Answer, AnswerFault } from '../../../classroom/papers/answer';
import { headRows, testRows, workRows } from '../../../record/rows';
import { wellWords } from '../../../record/wellWords';
import { formatNumber, say, t, type MessageKey } from '../../../words';

export interface Fact {
  readonly what: string;
  readonly is: string;
}

const depth = (depth_m: number): string => t('papers.key.depthIs', { depth_m });

/** Signs as a list; neighbours in number as one stretch. Worked value: T-01, T-02, T-03, fish -> T-01 to T-03, Fish. */
export function signs(who: readonly string[]): string {
  const numberOf = (sign: string): number | null => Number(/^T-(\d+)$/.exec(sign)?.[1] ?? Number.NaN) || null;
  const parts: string[][] = [];
  for (const sign of who) {
    const last = parts.at(-1);
    const before = last ? numberOf(last.at(-1)!) : null;
    if (last && before !== null && numberOf(sign) === before + 1) last.push(sign);
    else parts.push([sign]);
  }
  return parts
    .flatMap((part) =>
      part.length < 3
        ? part.map(whoWords)
        : [t('papers.key.stretch', { from: whoWords(part[0]!), to: whoWords(part.at(-1)!) })],
    )
    .join(', ');
}

export function waterFacts({ water, wells }: Answer): Fact[] {
  return [
    { what: t('papers.key.water.now'), is: depth(water.waterTable_m) },
    { what: t('papers.key.water.dry'), is: depth(water.lowestWater_m) },
    ...water.heads.map(({ top_m, bottom_m, head_m }) => ({
      what: t('papers.key.water.rise', { from_m: top_m, to_m: bottom_m }),
      is: depth(head_m),
    })),
    ...water.salinity.map(({ from_m, salt_gL }) => ({
      what: t('papers.key.water.salt', { from_m }),
      is: t('papers.key.water.saltIs', { salt_gL }),
    })),
    ...wells.map(({ hamlet, depth_m, level_m, dryLevel_m }) => ({
      what: t('papers.key.wells.at', { hamlet }),
      is: t('papers.key.wells.is', { depth_m, level_m, dry_m: dryLevel_m }),
    })),
  ];
}

export function faultFact({ fault, at }: AnswerFault): Fact {
  const when =
    'tick' in at
      ? t('papers.key.at.time', { time_s: at.tick })
      : 'depth_m' in at
        ? t('papers.key.at.depth', { depth_m: at.depth_m })
        : t('papers.key.at.after', { time_s: at.delay_s, event: `event.${at.after}` });
  return { what: say(`papers.fault.${fault}`), is: when };
}

type Careful = NonNullable<Answer['careful']>;

/** So many of a kind are named; how much it was in all, another line says. */
const MOST_ADDED = 3;
const MOST_SAMPLES = 8;
const listed = (parts: readonly string[], most: number): string =>
  [...parts.slice(0, most), ...(parts.length > most ? ['…'] : [])].join(', ');

/** Rods, powder and samples: what happened on the way down. */
function wayFacts({ added, record }: Careful): Fact[] {
  const facts: readonly (readonly [what: MessageKey, is: string])[] = [
    ['papers.key.rods', record.rods.map(({ time_s }) => formatNumber(time_s / 60, 0)).join(', ')],
    [
      'papers.key.added',
      listed(
        added.map(({ at_s, additive, mass_g }) =>
          t('papers.key.added.is', { mass_g, additive: `work.additive.${additive}`, time_s: at_s }),
        ),
        MOST_ADDED,
      ),
    ],
    [
      'papers.key.samples',
      listed(
        record.samples.map(({ depth_m, main }) =>
          t('papers.key.samples.is', { depth_m, kind: `work.kind.${main ?? 'unknown'}` }),
        ),
        MOST_SAMPLES,
      ),
    ],
  ];
  return facts.filter(([, is]) => is !== '').map(([what, is]) => ({ what: t(what), is }));
}

/** What the crew did, as its own record tells it; its day has no date. */
export function doneFacts(careful: Careful): Fact[] {
  const { record } = careful;
  const head = headRows(record).filter(({ label }) => label !== 'record.head.begun');
  const rows = [...head, ...(record.casing ? [...workRows(record), ...testRows(record)] : [])];
  const told = rows.filter(({ is }) => is !== '').map(({ label, is }) => ({ what: t(label), is }));
  return [...told.slice(0, head.length), ...wayFacts(careful), ...told.slice(head.length)];
}

export const wellLines = (record: RecordSheet): string[] =>
  record.casing ? wellWords(record).map(({ words }) => words) : [];
