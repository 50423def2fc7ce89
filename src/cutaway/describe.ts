// What each thing in the drawing is and what it is doing, as message keys with data. No drawing here: the same list
// serves the pointer, the tap, and those who listen instead of looking.

import { cloudiness } from './palette';
import type { CutawayView, ShownChamber, ShownHole } from './shown';
import { describeWell, WELL_THINGS } from './describeWell';
import { tellCake, tellFalling, tellSeep, tellWall } from './describeWall';
import { keyOf as key, round, type Description, type Thing } from './thing';

export { THINGS, type Description, type Thing } from './thing';

const cm = (length_m: number): number => Math.max(0, Math.round(length_m * 20) * 5);

function cloudWord(fines_frac: number): string {
  const c = cloudiness(fines_frac);
  return key(c < 0.12 ? 'clear' : c < 0.45 ? 'cloudy' : c < 0.75 ? 'muddy' : 'thick');
}

function loadWord(share_frac: number): string {
  return key(
    share_frac < 0.0008
      ? 'noGrains'
      : share_frac < 0.008
        ? 'fewGrains'
        : share_frac < 0.03
          ? 'someGrains'
          : 'manyGrains',
  );
}

const flowing = (view: CutawayView): boolean => view.pump.flow_m3s > 0;

/** Share of sand and coarser grains in the fluid of the whole hole. */
export function sandShare(hole: ShownHole): number {
  let sum = 0;
  const classes = hole.bed_frac.length;
  for (let k = 2; k < classes; k++) for (let i = 0; i < hole.cells; i++) sum += hole.solids_frac[k * hole.stride + i];
  return hole.cells > 0 ? sum / hole.cells : 0;
}

function finesShare(hole: ShownHole): number {
  let sum = 0;
  for (let k = 0; k < 2; k++) for (let i = 0; i < hole.cells; i++) sum += hole.solids_frac[k * hole.stride + i];
  return hole.cells > 0 ? sum / hole.cells : 0;
}

function chamber(name: 'settling' | 'suction', shown: ShownChamber): Description {
  return { thing: name, key: key(name), data: { cm: cm(shown.level_m), cloud: cloudWord(shown.fines_frac) } };
}

function tellStem(view: CutawayView): Description {
  const { stem } = view;
  const state = stem.stuck ? 'stemStuck' : stem.tight ? 'stemTight' : stem.turning ? 'stemTurning' : 'stemHanging';
  return { thing: 'stem', key: key(state), data: { n: stem.rods } };
}

function tellBit(view: CutawayView): Description {
  const { stem, hole } = view;
  const data = { depth: round(stem.bit_m, 0.05) };
  if (stem.sinking_ms > 0.0003 && stem.turning) return { thing: 'bit', key: key('bitCutting'), data };
  const buried_m = hole ? stem.bit_m - (hole.depth_m - hole.bed_m) : 0;
  if (buried_m > 0.03) return { thing: 'bit', key: key('bitBuried'), data };
  const off_m = stem.bottom_m - stem.bit_m;
  if (off_m > 0.04) return { thing: 'bit', key: key('bitOff'), data: { ...data, cm: Math.round(off_m * 100) } };
  return { thing: 'bit', key: key('bitOn'), data };
}

function tellFluid(view: CutawayView, hole: ShownHole): Description {
  const data = { cloud: cloudWord(finesShare(hole)), load: loadWord(sandShare(hole)) };
  return { thing: 'fluid', key: key(flowing(view) ? 'fluidRising' : 'fluidStill'), data };
}

function tellPump({ pump }: CutawayView): Description {
  const state = pump.dead
    ? 'pumpDead'
    : !pump.primed
      ? 'pumpDry'
      : !pump.running
        ? 'pumpOff'
        : pump.flow_m3s > 0
          ? 'pumpRunning'
          : 'pumpNoFlow';
  return { thing: 'pump', key: key(state) };
}

const hoseWord = (view: CutawayView) =>
  view.pump.lost_frac > 0
    ? flowing(view)
      ? 'deliveryHoseSprays'
      : 'deliveryHoseTorn'
    : flowing(view)
      ? 'deliveryHoseFlowing'
      : 'deliveryHose';

function tellReturns(view: CutawayView): Description {
  const { share_frac, fines_frac, grains_frac } = view.returns;
  if (!flowing(view) || share_frac < 0.02) return { thing: 'channel', key: key('channelDry') };
  let grains = 0;
  for (let k = 2; k < grains_frac.length; k++) grains += grains_frac[k];
  const state = share_frac > 0.85 ? 'channelFull' : share_frac > 0.4 ? 'channelPart' : 'channelLittle';
  return { thing: 'channel', key: key(state), data: { cloud: cloudWord(fines_frac), load: loadWord(grains) } };
}

function tellCrew({ crew }: CutawayView): Description {
  const busy = crew.workers.filter((one) => one.post !== 'idle').length;
  const data = { n: crew.workers.length, busy, away: crew.away };
  return { thing: 'crew', key: key(crew.away > 0 ? 'crewAway' : 'crew'), data };
}

function tellStrainer({ pit }: CutawayView): Description {
  const blocked = pit.strainerBlocked_frac;
  const state = blocked > 0.6 ? 'strainerBlocked' : blocked > 0.2 ? 'strainerPart' : 'strainerClean';
  const clear_m = pit.strainer_m - pit.suction.deposit_m;
  return { thing: 'strainer', key: key(clear_m < 0.1 ? `${state}Low` : state), data: { cm: cm(clear_m) } };
}

/** Not there before the pit is dug. */
const OF_THE_PIT: readonly Thing[] = ['channel', 'settling', 'heap', 'suction', 'strainer', 'suctionHose'];

/** Not there when the last rod is off. */
const OF_THE_STEM: readonly Thing[] = ['stem', 'bit', 'drive', 'swivel', 'rope', 'deliveryHose'];

const isOfWell = (thing: Thing): thing is (typeof WELL_THINGS)[number] =>
  (WELL_THINGS as readonly Thing[]).includes(thing);

/** What one thing is doing; null where the view has no such thing. */
export function describe(view: CutawayView, thing: Thing): Description | null {
  const { stem, hole, pit } = view;
  if (!pit.dug && OF_THE_PIT.includes(thing)) return null;
  if (stem.out && OF_THE_STEM.includes(thing)) return null;
  if (isOfWell(thing)) return describeWell(view, thing);
  switch (thing) {
    case 'crew':
      return tellCrew(view);
    case 'rain':
      return view.sky === 'dry' ? null : { thing, key: key(view.sky) };
    case 'drive':
      return { thing, key: key(stem.turning ? 'driveTurning' : 'driveStill') };
    case 'swivel':
      return { thing, key: key(flowing(view) ? 'swivelFlowing' : 'swivel') };
    case 'rope':
      return { thing, key: key(stem.feed_frac > 0 ? 'ropeFeeding' : 'ropeHolding'), data: { share: stem.feed_frac } };
    case 'stem':
      return tellStem(view);
    case 'bit':
      return tellBit(view);
    case 'fluid':
      return hole ? tellFluid(view, hole) : null;
    case 'air':
      return hole && hole.level_m > 0.03 ? { thing, key: key('air'), data: { depth: round(hole.level_m, 0.1) } } : null;
    case 'wall':
      return hole ? tellWall(view, hole) : null;
    case 'cake':
      return hole ? tellCake(hole) : null;
    case 'falling':
      return hole ? tellFalling(hole) : null;
    case 'seep':
      return hole ? tellSeep(hole) : null;
    case 'bed':
      return hole && hole.bed_m > 0.01 ? { thing, key: key('bed'), data: { cm: Math.round(hole.bed_m * 100) } } : null;
    case 'nominal':
      return hole ? null : { thing, key: key('nominal'), data: { depth: round(stem.bottom_m, 0.05) } };
    case 'channel':
      return tellReturns(view);
    case 'settling':
      return chamber('settling', pit.settling);
    case 'suction':
      return chamber('suction', pit.suction);
    case 'heap':
      return pit.settling.deposit_m > 0.005
        ? { thing, key: key('heap'), data: { cm: cm(pit.settling.deposit_m) } }
        : null;
    case 'strainer':
      return tellStrainer(view);
    case 'pump':
      return tellPump(view);
    case 'deliveryHose':
      return { thing, key: key(hoseWord(view)) };
    case 'suctionHose':
      return { thing, key: key(flowing(view) ? 'suctionHoseFlowing' : 'suctionHose') };
    case 'rack':
      return { thing, key: key('rack'), data: { n: stem.rodsInRack } };
    case 'ownLog':
      return view.ownLog.length > 0
        ? { thing, key: key('ownLog'), data: { n: view.ownLog.length } }
        : { thing, key: key('ownLogEmpty') };
    case 'neighbours':
      return view.neighbours
        ? { thing, key: key('neighbours'), data: { top: view.neighbours.top_m, bottom: view.neighbours.bottom_m } }
        : null;
    case 'ground':
      return { thing, key: key(view.layers ? 'groundOpen' : 'ground') };
    default:
      return { thing, key: key(thing) };
  }
}

/** A layer of the true ground under a depth; null where the ground is closed. */
export function describeLayer(view: CutawayView, depth_m: number): Description | null {
  const layer = view.layers?.find((one) => depth_m >= one.top_m && depth_m < one.bottom_m);
  if (!layer) return null;
  const data = { kind: `cutaway.kind.${layer.kind}`, top: round(layer.top_m, 0.1), bottom: round(layer.bottom_m, 0.1) };
  return { thing: 'ground', key: key('layer'), data };
}

/** Order in which a listener is told: the stem and the hole first, then the fluid's way round, then the rest. */
const TOLD: readonly Thing[] = [
  'crew',
  'rain',
  ...WELL_THINGS,
  'stem',
  'bit',
  'drive',
  'rope',
  'fluid',
  'air',
  'wall',
  'cake',
  'falling',
  'seep',
  'bed',
  'nominal',
  'channel',
  'settling',
  'heap',
  'suction',
  'strainer',
  'pump',
  'rack',
  'neighbours',
  'ownLog',
  'ground',
];

/** Everything that the drawing shows, as a list of things and what they are doing. */
export function describeAll(view: CutawayView): Description[] {
  const told: Description[] = [];
  for (const thing of TOLD) {
    const one = describe(view, thing);
    if (one) told.push(one);
  }
  for (const layer of view.layers ?? []) {
    const one = describeLayer(view, (layer.top_m + layer.bottom_m) / 2);
    if (one) told.push(one);
  }
  return told;
}
