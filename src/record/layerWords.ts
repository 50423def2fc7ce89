// A layer of the record in words: the names of its soils after ISO 14688-1, its symbol, colours and feel as the samples were named.
import type { RecordSheet } from '$lessons';
import { say, t } from '../words';
import { FGDC_CODE, isoSymbol } from './soilNames';

type Layer = RecordSheet['layers'][number];

/** Neighbours of one name are one layer on paper. */
export function joined(layers: readonly Layer[]): Layer[] {
  const list: Layer[] = [];
  for (const layer of [...layers].sort((a, b) => a.from_m - b.from_m)) {
    const above = list.at(-1);
    if (!above || above.kind !== layer.kind || Math.abs(above.to_m - layer.from_m) > 1e-6) {
      list.push(layer);
      continue;
    }
    const both = <T>(one: readonly T[], other: readonly T[]): T[] => [...new Set([...one, ...other])];
    list[list.length - 1] = {
      ...above,
      to_m: layer.to_m,
      secondary: both(above.secondary, layer.secondary),
      colours: both(above.colours, layer.colours),
      feels: both(above.feels, layer.feels),
      samples: both(above.samples, layer.samples),
    };
  }
  return list;
}

const listed = (prefix: string, words: readonly string[]): string =>
  words.map((word) => say(`${prefix}.${word}`)).join(', ');

/** How much is said of a layer: all, its name alone, or only the symbol. */
export type Length = 'all' | 'name' | 'symbol';

/** Name, mixture and symbol, then what was seen and felt. Where there is no symbol the name stands for it. */
export function layerWords(layer: Layer, length: Length = 'all'): string {
  const mixed = layer.secondary.filter((kind) => kind !== layer.kind);
  const symbol = isoSymbol(layer.kind, mixed);
  if (length === 'symbol' && symbol !== '') return symbol;
  const name = mixed.length
    ? t('record.layer.mixed', { main: `work.kind.${layer.kind}`, mixed: listed('work.kind', mixed) })
    : say(`work.kind.${layer.kind}`);
  const head = symbol === '' ? name : t('record.layer.symbol', { name, symbol });
  if (length !== 'all') return head;
  const seen = [listed('work.colour', layer.colours), listed('work.touch', layer.feels)].filter((one) => one !== '');
  return seen.length > 0 ? t('record.layer.seen', { name: head, seen: seen.join(', ') }) : head;
}

/** Numbers of the FGDC patterns on the paper, in order. */
export function patternCodes(layers: readonly Layer[]): string {
  const codes = new Set(layers.flatMap(({ kind }) => FGDC_CODE[kind] ?? []));
  return [...codes].sort((a, b) => a - b).join(', ');
}
