// Names of soils on the record: symbols of ISO 14688-1 (main soil in capitals, what it is mixed with before it in small letters)
// and the pattern numbers of FGDC-STD-013-2006, section 37. The symbols are from memory of the standard; topsoil and what was not told have none.
import type { KindWord } from '$sim';

const ISO_SYMBOL: Readonly<Record<KindWord, string | null>> = {
  topsoil: null,
  clay: 'Cl',
  silt: 'Si',
  siltySand: 'siSa',
  fineSand: 'FSa',
  mediumSand: 'MSa',
  coarseSand: 'CSa',
  gravel: 'Gr',
  peat: 'Or',
  unknown: null,
};

/** What a soil is called where it is mixed into another: a sand of any size is sa. */
const ISO_MIXED: Readonly<Partial<Record<KindWord, string>>> = {
  clay: 'cl',
  silt: 'si',
  siltySand: 'sa',
  fineSand: 'sa',
  mediumSand: 'sa',
  coarseSand: 'sa',
  gravel: 'gr',
  peat: 'or',
};

/** Symbol of a soil and what it is mixed with; empty where the standard has none. Worked value: coarse sand with gravel -> grCSa. */
export function isoSymbol(main: KindWord, mixed: readonly KindWord[] = []): string {
  const symbol = ISO_SYMBOL[main];
  if (symbol === null) return '';
  const before = [...new Set(mixed.flatMap((kind) => ISO_MIXED[kind] ?? []))];
  return `${before.filter((one) => !symbol.startsWith(one)).join('')}${symbol}`;
}

export const FGDC_CODE: Readonly<Partial<Record<KindWord, number>>> = {
  clay: 620,
  silt: 616,
  siltySand: 612,
  fineSand: 608,
  mediumSand: 607,
  coarseSand: 607,
  gravel: 601,
  peat: 657,
};
