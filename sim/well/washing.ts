// Development: how bailing, surging, pumping and back-washing bring mud and fines out of the ground round the screen.
import { exp, ln } from '../numeric/functions';
import { openPerMetre_m } from '../completion/slots';
import type { ScreenRing } from './ring';
import type { Standing } from './standing';

const LN_2 = ln(2);
const L_A_MINUTE = 60000;

export const WASH_METHODS = ['bail', 'surge', 'overPump', 'backWash'] as const;
export type WashMethod = (typeof WASH_METHODS)[number];

export interface WashPower {
  /** Mud washed out per hour at the usual pace, by a well of the usual open area, polymer whole. */
  readonly mud_1h: number;
  /** Loose fines drawn out, in the same way. */
  readonly fines_1h: number;
  /** Bridges of grains made (flow one way only) and broken (flow reversing) per hour. */
  readonly bridging_1h: number;
  readonly breaking_1h: number;
  /** Strokes or litres a minute that these paces stand for. */
  readonly usual: number;
  /** How much cloudier the water is than that of quiet drawing. */
  readonly stirs_ratio: number;
}

/**
 * ASSUMED, in the order of the handbooks: reversing flow does most, drawing one way only bridges the grains (Driscoll 1986, from memory).
 * Fines: sand decays with 20 minutes under a surge block.
 */
export const WASH: Readonly<Record<WashMethod, WashPower>> = {
  bail: { mud_1h: 0.2, fines_1h: 0.6, bridging_1h: 0, breaking_1h: 0.5, usual: 4, stirs_ratio: 1.3 },
  surge: { mud_1h: 1.2, fines_1h: 3, bridging_1h: 0, breaking_1h: 4, usual: 20, stirs_ratio: 2 },
  overPump: { mud_1h: 0.5, fines_1h: 1.2, bridging_1h: 0.6, breaking_1h: 0, usual: 20, stirs_ratio: 1 },
  backWash: { mud_1h: 1, fines_1h: 2.5, bridging_1h: 0, breaking_1h: 4, usual: 20, stirs_ratio: 2 },
};

/** Washing faster or slower than usual helps between these. ASSUMED. */
const PACE_ratio = [0.3, 1.5] as const;
/** Open area a metre of screen at which the paces hold, m2/m: 5 % of a 63 mm pipe; less or more counts between these. ASSUMED. */
const OPEN_m = 0.01;
const OPEN_ratio = [0.2, 1.5] as const;
/** Broken polymer washes out three times as fast (ASSUMED, see the development of handbooks: break first, then surge). */
export const BROKEN_ratio = 3;
/** Of the mud this share is never brought out. ASSUMED. */
export const MUD_STAYS_frac = 0.05;
/** Clay of a cake comes off so much more slowly than polymer. ASSUMED: bentonite needs a day of surging. */
const CLAY_SLOWER_ratio = 0.2;
/** A cell that draws more or less than its share is washed more or less, between these. ASSUMED. */
const SHARE_ratio = [0.1, 2] as const;

const between = ([least, most]: readonly [number, number], value: number): number =>
  value < least ? least : value > most ? most : value;

/** How hard a method works at this pace in a well of these slots: 1 as usual. Worked value: usual pace, .0064 m2/m -> .64. */
export const washPace_ratio = (method: WashMethod, pace: number, openPerMetre: number): number =>
  between(PACE_ratio, pace / WASH[method].usual) * between(OPEN_ratio, openPerMetre / OPEN_m);

/** Mud left after a time at a rate: what stays for good, and the rest falling as exp(-rate t). Worked value: 1, 1 an hour, 1 h -> .3995. */
export const mudAfter_frac = (mud_frac: number, rate_1h: number, time_h: number): number => {
  const loose = mud_frac - MUD_STAYS_frac;
  return loose > 0 ? MUD_STAYS_frac + loose * exp(-rate_1h * time_h) : mud_frac;
};

/**
 * So many seconds of washing, in place. Each cell by its share of the flow (the least that every cell has: a block moves water through all
 * slots), mud three times as fast once the polymer is broken: dM/dt = -k M.
 */
export function wash(ring: ScreenRing, standing: Standing, method: WashMethod, pace: number, time_s: number): void {
  const power = WASH[method];
  const time_h = (time_s / 3600) * washPace_ratio(method, pace, openPerMetre_m(standing.slots));
  let height_m = 0;
  for (let i = 0; i < ring.count; i++) height_m += ring.height_m[i];
  for (let i = 0; i < ring.count; i++) {
    const share = between(SHARE_ratio, (ring.flow_frac[i] * height_m) / ring.height_m[i]);
    const cell_h = time_h * share;
    const freer = 1 + (BROKEN_ratio - 1) * (1 - ring.whole_frac[i]);
    ring.mud_frac[i] = mudAfter_frac(ring.mud_frac[i], power.mud_1h * freer, cell_h);
    const offCake = 1 - ring.clay_frac[i] * (1 - CLAY_SLOWER_ratio / freer);
    ring.caked_frac[i] *= exp(-power.mud_1h * freer * offCake * cell_h);
    ring.washed_frac[i] = 1 - (1 - ring.washed_frac[i]) * exp(-power.fines_1h * cell_h);
    const bridged = ring.bridged_frac[i] * exp(-power.breaking_1h * time_h);
    ring.bridged_frac[i] = bridged + (1 - bridged) * (1 - exp(-power.bridging_1h * time_h));
  }
}

/** Water that comes in lifts polymer off the wall, half of it in so many seconds; clay much more slowly. ASSUMED: pack or sand leans on it. */
const LIFTS_s = 600;
const CLAY_LIFTS_ratio = 0.02;
/** Plain drawing washes so much less than pumping hard does. ASSUMED. */
const DRAWING_ratio = 0.3;

/** So many seconds of water coming in at a rate, in place: the cake lifts, and a little is washed out as by a pump. */
export function drawIn(ring: ScreenRing, standing: Standing, flow_m3s: number, time_s: number): void {
  for (let i = 0; i < ring.count; i++) {
    const freed = 1 - ring.clay_frac[i] * (1 - CLAY_LIFTS_ratio);
    ring.caked_frac[i] *= exp((-LN_2 * freed * time_s) / LIFTS_s);
  }
  const pace_ratio = (flow_m3s * L_A_MINUTE) / WASH.overPump.usual;
  wash(ring, standing, 'overPump', WASH.overPump.usual, DRAWING_ratio * Math.min(1, pace_ratio) * time_s);
}

/** Share of the mud that is still to come, 0 to 1, weighed by how thick it was: a fluid without polymer still leaves silt. */
const SILT_LEFT_frac = 0.2;
export const mudToCome_frac = (mud_frac: number, dose_ratio: number): number =>
  (Math.max(0, mud_frac - MUD_STAYS_frac) / (1 - MUD_STAYS_frac)) *
  (SILT_LEFT_frac + (1 - SILT_LEFT_frac) * Math.min(1, dose_ratio));
