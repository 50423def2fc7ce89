// The built well in words at their depths: casing, fills, screen, sump, water levels, for the drawing and for those who listen.
import type { RecordSheet } from '$lessons';
import { say, t } from '../words';

export interface AtDepth {
  readonly depth_m: number;
  readonly words: string;
}

/** The message of a material: grains of the pack, or what the hands call a seal. */
export const materialKey = (material: string): string =>
  material.startsWith('pack') ? `work.pack.${material}` : `work.seal.${material}`;

const middle = (from_m: number, to_m: number): number => (from_m + to_m) / 2;

function fillWords({ fills }: RecordSheet): AtDepth[] {
  return fills.flatMap(({ use, material, from_m, to_m }) => {
    const data = { use: `record.use.${use}`, material: materialKey(material) };
    if (from_m !== null && to_m !== null)
      return [{ depth_m: middle(from_m, to_m), words: t('record.fill.both', { ...data, from_m, to_m }) }];
    if (from_m !== null) return [{ depth_m: from_m, words: t('record.fill.top', { ...data, from_m }) }];
    if (to_m !== null) return [{ depth_m: to_m, words: t('record.fill.bottom', { ...data, to_m }) }];
    return [];
  });
}

function pipeWords({ casing, screen }: RecordSheet): AtDepth[] {
  if (!casing || !screen) return [];
  const list: AtDepth[] = [
    {
      depth_m: middle(0, screen.from_m) * 0.5,
      words: t('record.casing.short', { kind: `record.pipe.${casing.kind}`, to_m: screen.from_m }),
    },
    {
      depth_m: middle(screen.from_m, screen.to_m),
      words: t(screen.cloth === 'none' ? 'record.screen.short' : 'record.screen.shortCloth', {
        from_m: screen.from_m,
        to_m: screen.to_m,
        slot_mm: screen.slotWidth_mm,
        cloth: `record.cloth.${screen.cloth}`,
      }),
    },
  ];
  if (screen.sump_m > 0)
    list.push({ depth_m: screen.to_m + screen.sump_m / 2, words: t('record.sump.short', { sump_m: screen.sump_m }) });
  list.push({
    depth_m: casing.shoe_m,
    words: t(casing.cap ? 'record.shoe.cap' : 'record.shoe.open', { shoe_m: casing.shoe_m }),
  });
  return list;
}

function levelWords({ test, levels }: RecordSheet): AtDepth[] {
  const rest_m = test?.static_m ?? levels.at(-1)?.depth_m;
  const list: AtDepth[] = [];
  if (rest_m !== undefined) list.push({ depth_m: rest_m, words: t('record.rest.short', { depth_m: rest_m }) });
  if (test) list.push({ depth_m: test.lowest_m, words: t('record.lowest.short', { depth_m: test.lowest_m }) });
  return list;
}

export function wellWords(sheet: RecordSheet): AtDepth[] {
  const list = [...pipeWords(sheet), ...fillWords(sheet), ...levelWords(sheet)];
  if (sheet.headWorks) list.push({ depth_m: 0, words: t('record.apron.short', { apron_m: sheet.headWorks.apron_m }) });
  if (sheet.hole)
    list.push({ depth_m: sheet.hole.depth_m, words: t('record.hole.short', { depth_m: sheet.hole.depth_m }) });
  return list.sort((a, b) => a.depth_m - b.depth_m);
}

/** Things noticed while drilling, one line: the first few. */
export function noticedWords({ noticed }: RecordSheet, most: number): string {
  const shown = noticed
    .slice(0, most)
    .map(({ event, depth_m }) => t('record.noticed.one', { event: `record.noticed.${event}`, depth_m }));
  const rest = noticed.length - shown.length;
  return (rest > 0 ? [...shown, t('record.more', { n: rest })] : shown).join('; ');
}

export const lastFew = <T>(list: readonly T[], most: number): readonly T[] =>
  list.slice(Math.max(0, list.length - most));

/** A job moment as day and hours since the start. */
export const moment = (time_s: number | null): string => (time_s === null ? '' : say('record.after', { time_s }));
