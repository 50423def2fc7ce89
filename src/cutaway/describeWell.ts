// What the pieces of the well are and what they are doing, as message keys with data.

import type { CutawayView, ShownCasing, ShownWell } from './shown';
import { keyOf as key, round, type Description, type Thing } from './thing';
import { bandsOf, voidsOf, type Band } from './wellShape';

export const WELL_THINGS = [
  'casing',
  'screen',
  'casingWater',
  'inflow',
  'drawn',
  'pack',
  'seal',
  'cavedIn',
  'void',
  'sounded',
  'cone',
  'apron',
  'wellPump',
] as const satisfies readonly Thing[];
type WellThing = (typeof WELL_THINGS)[number];

const LOOKS: Readonly<Record<ShownCasing['look'], string>> = {
  air: 'casingAir',
  free: 'casingFree',
  hung: 'casingHung',
  floating: 'casingFloating',
  landed: 'casingLanded',
  set: 'casingSet',
};

const Lmin = (flow_m3s: number): number => Math.abs(flow_m3s) * 60000;

function tellCasing({ casing }: ShownWell, stemOut: boolean): Description | null {
  if (!casing) return null;
  if (!stemOut) return { thing: 'casing', key: key('casingReady') };
  if (casing.snapped_m !== null)
    return { thing: 'casing', key: key('casingSnapped'), data: { depth: round(casing.snapped_m, 0.1) } };
  return { thing: 'casing', key: key(LOOKS[casing.look]), data: { depth: round(casing.shoe_m, 0.05) } };
}

function tellScreen({ casing }: ShownWell): Description | null {
  if (!casing?.screen || casing.shoe_m <= 0) return null;
  const data = {
    top: round(casing.screen.from_m, 0.05),
    bottom: round(casing.screen.to_m, 0.05),
    mm: casing.slotWidth_m * 1000,
  };
  return { thing: 'screen', key: key(casing.cloth ? 'screenCloth' : 'screen'), data };
}

/** From the upper end of the uppermost to the lower end of the lowest of some bands. */
function spanOf(bands: readonly Band[]): { top: number; bottom: number } | null {
  const first = bands[0];
  return first ? { top: round(first.from_m, 0.05), bottom: round(bands.at(-1)!.to_m, 0.05) } : null;
}

function tellFill(well: ShownWell, thing: 'pack' | 'seal' | 'cavedIn'): Description | null {
  const { annulus } = well;
  if (!annulus) return null;
  const wanted = bandsOf(annulus).filter(({ fill }) => {
    if (annulus.grain_m[fill]! > 0) return thing === 'pack';
    return thing === (annulus.fills[fill] === 'ground' ? 'cavedIn' : 'seal');
  });
  const span = spanOf(wanted);
  if (!span) return null;
  const name = annulus.fills[wanted[0]!.fill]!;
  if (thing === 'cavedIn') return { thing, key: key('cavedIn'), data: span };
  const clogged = thing === 'pack' && annulus.clogged_frac.some((share) => share > 0.05);
  const what = thing === 'pack' ? `work.pack.${name}` : `work.seal.${name}`;
  return { thing, key: key(clogged ? 'packClogged' : thing), data: { ...span, what } };
}

function tellVoid({ annulus }: ShownWell): Description | null {
  const [first] = annulus ? voidsOf(annulus) : [];
  if (!first) return null;
  return { thing: 'void', key: key('void'), data: { top: round(first[0], 0.05), bottom: round(first[1], 0.05) } };
}

function tellWater({ casing }: ShownWell): Description | null {
  if (!casing || casing.level_m === null) return null;
  const data = { level: round(casing.level_m, 0.05) };
  return { thing: 'casingWater', key: key(casing.dipped ? 'casingDipped' : 'casingWater'), data };
}

/** What one thing of the well is doing; null where there is none. */
export function describeWell({ well, stem }: CutawayView, thing: WellThing): Description | null {
  if (!well) return null;
  switch (thing) {
    case 'casing':
      return tellCasing(well, stem.out);
    case 'screen':
      return tellScreen(well);
    case 'casingWater':
      return tellWater(well);
    case 'pack':
    case 'seal':
    case 'cavedIn':
      return tellFill(well, thing);
    case 'void':
      return tellVoid(well);
    case 'inflow':
      if (Math.abs(well.inflow_m3s) < 1e-6) return null;
      return {
        thing,
        key: key(well.inflow_m3s > 0 ? 'inflow' : 'outflow'),
        data: { rate_Lmin: Lmin(well.inflow_m3s) },
      };
    case 'drawn':
      return well.drawn_m3s > 1e-6 ? { thing, key: key('drawn'), data: { rate_Lmin: Lmin(well.drawn_m3s) } } : null;
    case 'sounded':
      return well.sounded_m === null ? null : { thing, key: key('sounded'), data: { top: well.sounded_m } };
    case 'cone': {
      const level_m = well.casing?.level_m ?? null;
      if (well.rest_m === null || level_m === null || level_m - well.rest_m < 0.03) return null;
      return { thing, key: key('cone'), data: { down: round(level_m - well.rest_m, 0.05) } };
    }
    case 'apron':
      return well.head && { thing, key: key('apron'), data: { apron: well.head.apron_m, drain: well.head.drain_m } };
    case 'wellPump':
      return well.head && { thing, key: key('wellPump'), data: { what: `work.lift.${well.head.lift}` } };
  }
}
