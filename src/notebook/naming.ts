// How samples and layers are written down: the name a sample was given, the rod a depth belongs to, the rows of the record.
import type { ColourWord, KindWord, OwnLayer, TraySample } from '$sim';
import type { KeyedMessage } from '../words';

/** The trainee's name for a sample as a message, or that it has none yet. */
export function namingOf(named: TraySample['named']): KeyedMessage {
  if (!named) return { key: 'work.tray.unnamed' };
  const data: Record<string, string> = { main: `work.kind.${named.main}` };
  if (named.secondary) data['secondary'] = `work.kind.${named.secondary}`;
  if (named.colour) data['colour'] = `work.colour.${named.colour}`;
  const form = named.secondary ? 'two' : 'one';
  return { key: `work.naming.${form}${named.colour ? 'Colour' : ''}`, data };
}

/** The rod, counted from 1, that was going down at a depth; the end of a rod still belongs to it. */
export function rodOf(depth_m: number, rodLength_m: number): number {
  return Math.max(1, Math.ceil(depth_m / rodLength_m - 1e-9));
}

export interface RecordRow {
  readonly fromRod: number;
  readonly toRod: number;
  readonly from_m: number;
  readonly to_m: number;
  readonly kind: KindWord;
  readonly colours: readonly ColourWord[];
  readonly samples: readonly number[];
}

/** The trainee's own record: a row for each logged layer, with the samples whose labels fall into it. */
export function recordRows(
  layers: readonly OwnLayer[],
  samples: readonly TraySample[],
  rodLength_m: number,
): RecordRow[] {
  return layers.map((layer) => {
    const within = samples.filter((sample) => sample.label_m > layer.from_m && sample.label_m <= layer.to_m);
    const colours = within.flatMap((sample) => (sample.named?.colour ? [sample.named.colour] : []));
    return {
      fromRod: rodOf(layer.from_m + 1e-6, rodLength_m),
      toRod: rodOf(layer.to_m, rodLength_m),
      from_m: layer.from_m,
      to_m: layer.to_m,
      kind: layer.kind,
      colours: [...new Set(colours)],
      samples: within.map((sample) => sample.sample),
    };
  });
}

/** Where the next layer most likely starts: at the end of the last one. */
export function nextTop_m(layers: readonly OwnLayer[]): number {
  return layers.reduce((deepest, layer) => Math.max(deepest, layer.to_m), 0);
}
