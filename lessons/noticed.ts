// The events that a crew notices: what a card, a prologue or a fault may wait for.

import type { EventName } from '$sim';

/** What a card may wait for; a record, so that the compiler misses none. */
const NOTICED = {
  primed: true,
  primeLost: true,
  primeFailed: true,
  pumpGulps: true,
  pumpWorn: true,
  sealBurnt: true,
  strainerBlocked: true,
  pitLow: true,
  pitFull: true,
  waterOut: true,
  powderOut: true,
  petrolOut: true,
  newHole: true,
  engineStopped: true,
  hoseBurst: true,
  mended: true,
  rainBegins: true,
  rainEnds: true,
  toolGone: true,
  nothingFished: true,
  helperGone: true,
  helperBack: true,
  duskNear: true,
  nightfall: true,
  morning: true,
  flowStarted: true,
  flowStopped: true,
  rodDown: true,
  rodAdded: true,
  rodRemoved: true,
  buried: true,
  tight: true,
  stuck: true,
  freed: true,
  stemOut: true,
  balled: true,
  unballed: true,
  bitRefused: true,
  driveHot: true,
  driveCool: true,
  stalled: true,
  restarted: true,
  clear: true,
  soaked: true,
  returnsLost: true,
  returnsBack: true,
  sampleCaught: true,
  refused: true,
  drillingStopped: true,
  siteChosen: true,
  wellPlanned: true,
  stemPulled: true,
  casingJoined: true,
  casingHung: true,
  casingFloats: true,
  casingLanded: true,
  casingSnapped: true,
  packPoured: true,
  sounded: true,
  sealPlaced: true,
  sealSet: true,
  wellClear: true,
  dipped: true,
  testDone: true,
  recovered: true,
  disinfected: true,
  headWorksDone: true,
  handedOver: true,
  crewRelieved: true,
  leftToCrew: true,
  taskDone: true,
  ended: true,
} as const satisfies Record<
  Exclude<
    EventName,
    | 'layerChanged'
    | 'sloughing'
    | 'wallFails'
    | 'holeClosed'
    | 'packBridged'
    | 'wellClosed'
    | 'polymerBroken'
    | 'toolDropped'
    | 'powderWeak'
  >,
  true
>;
export const NOTICED_EVENTS = Object.keys(NOTICED) as (keyof typeof NOTICED)[];
