// Where each of the crew stands and where the hands are, in pixels: by the gear, the pit or the mouth, feet on the bank.

import { gearShape, winchHandle } from './gear';
import { halfOf, type Place } from './place';
import { pitShape, type ChamberShape } from './pitShape';
import type { CutawayView, ShownWorker } from './shown';

/** A grown person to the depth scale, as the rods above ground are, m; but never too small to be seen. */
const TALL_m = 1.6;
const LEAST_GEAR = 58;
const LEAST_px = 30;
/** Share of the sky that a person may take. */
const MOST_SKY = 0.72;
/** Height of the shoulder and length of an arm, shares of the height. */
export const SHOULDER = 0.8;
export const ARM = 0.44;

/** Who waits stands so far from the next, and whoever is at the pump so far within the picture; shares of the height. */
const APART = 0.42;
const EDGE = 0.24;

export interface Stance {
  /** Middle of the feet. */
  x: number;
  /** 1 looks to the right, -1 to the left. */
  face: 1 | -1;
  /** 0 upright, 1 bent down. */
  stoop: number;
  /** Where both hands are. */
  hands: [x1: number, y1: number, x2: number, y2: number];
  /** Where the far end of the tool is. */
  end: [x: number, y: number];
}

export interface Bones {
  hip: [x: number, y: number];
  shoulder: [x: number, y: number];
  head: [x: number, y: number];
}

/** Hip, shoulder and head of somebody who stands or bends so. */
export function bonesOf({ x, face, stoop }: Stance, ground: number, h: number): Bones {
  const hip: [number, number] = [x - face * 0.1 * h * stoop, ground - h * (0.48 - 0.2 * stoop)];
  const shoulder: [number, number] = [
    hip[0] + face * (0.02 + 0.27 * stoop) * h,
    hip[1] - h * (SHOULDER - 0.48) * (1 - 0.42 * stoop),
  ];
  const head: [number, number] = [
    shoulder[0] + face * (0.02 + 0.08 * stoop) * h,
    shoulder[1] - h * (0.12 - 0.06 * stoop),
  ];
  return { hip, shoulder, head };
}

export const heightOf_px = (place: Place): number =>
  Math.min(
    Math.max(TALL_m * place.depth_pxm, LEAST_GEAR * place.gear_px, LEAST_px * place.zoom),
    place.sky_px * MOST_SKY,
  );

/** Bent over a chamber, with something that reaches down into it. */
function overChamber(box: ChamberShape, h: number, to_y: number, side: 1 | -1): Stance {
  const middle = (box.left + box.right) / 2;
  const x = middle - side * 0.3 * h;
  const y = box.rim - 0.22 * h;
  return {
    x,
    face: side,
    stoop: 0.75,
    hands: [middle - side * 0.03 * h, y, middle, y + 0.07 * h],
    end: [middle + side * 0.06 * h, to_y],
  };
}

const REACH = 0.97 * ARM;

/** Steps as near as the first hand needs, unless that is over the hole; what is still out of reach is reached for. */
function withinReach(stance: Stance, ground: number, h: number, fixed: boolean): Stance {
  const far = REACH * h;
  for (let i = 0; i < 4; i += 2) {
    const { shoulder } = bonesOf(stance, ground, h);
    const dy = Math.max(-far, Math.min(far, stance.hands[i + 1]! - shoulder[1]));
    const wide = Math.sqrt(far * far - dy * dy);
    const dx = stance.hands[i]! - shoulder[0];
    const over = Math.abs(dx) - wide;
    if (i === 0 && over > 0 && !fixed) stance.x += Math.sign(dx) * over;
    else if (over > 0) stance.hands[i] = shoulder[0] + Math.sign(dx) * wide;
    stance.hands[i + 1] = shoulder[1] + dy;
  }
  return stance;
}

export function stanceOf(view: CutawayView, place: Place, bit_m: number, worker: ShownWorker, nth: number): Stance {
  const fixed = worker.post === 'mouth' || worker.post === 'mouthBeyond' || worker.post === 'idle';
  const h = heightOf_px(place);
  const stance = withinReach(postOf(view, place, bit_m, worker, nth), place.ground_y, h, fixed);
  return worker.post === 'pump' && place.zoom === 1 ? { ...stance, x: Math.max(EDGE * h, stance.x) } : stance;
}

function postOf(view: CutawayView, place: Place, bit_m: number, worker: ShownWorker, nth: number): Stance {
  const h = heightOf_px(place);
  const u = place.gear_px;
  const gear = gearShape(view, place, bit_m);
  const pit = pitShape(view, place);
  const ground = place.ground_y;
  const rod = halfOf(place, view.kit.rodOutside_m / 2);
  const mouth = halfOf(place, view.kit.bit_m / 2);
  const upright = (x: number, face: 1 | -1, hx: number, hy: number, gap = 0.05): Stance => ({
    x,
    face,
    stoop: 0,
    hands: [hx, hy, hx - face * gap * h, hy + gap * h],
    end: [hx, hy],
  });
  switch (worker.post) {
    case 'handle': {
      // As high as the arms reach: above that the steel itself is held.
      const grip_y = gear.stemTop_y - 25 * u * 0.45 + 5 * u;
      const low = ground - 1.1 * h;
      const held = grip_y < low;
      const grip_x = place.hole_x - rod - (held ? 1 : 18 * u);
      const y = Math.max(grip_y, low);
      const one = upright(grip_x - 0.25 * h, 1, grip_x, y);
      return { ...one, stoop: y > ground - 0.4 * h ? 0.6 : 0 };
    }
    case 'winch': {
      const [x, y] = winchHandle(view, place, bit_m);
      const one = upright(gear.winch_x + 0.34 * h, -1, x, y);
      one.hands[2] = gear.winch_x + 4 * u;
      one.hands[3] = gear.winch_y;
      return { ...one, stoop: gear.winch_y > ground - 0.45 * h ? 0.35 : 0 };
    }
    case 'mouth':
    case 'mouthBeyond': {
      const face = worker.post === 'mouth' ? 1 : -1;
      const steel = view.stem.out ? rod * 0.8 : rod;
      const hx = place.hole_x - face * (steel + 1);
      const one = upright(place.hole_x - face * (mouth + 0.1 * h), face, hx, ground - 0.62 * h, 0.1);
      one.stoop = 0.35;
      one.hands[2] = hx;
      if (worker.tool === 'none') return one;
      const low = ground - 0.3 * h;
      const near = place.hole_x - face * (mouth * 0.7 + 0.05 * h);
      return { ...one, stoop: 0.4, hands: [near, low, near - face * 0.05 * h, low + 0.04 * h], end: [near, low] };
    }
    case 'pump':
      return { ...upright(gear.pump_x + 10 * u, 1, gear.pump_x + 30 * u, gear.pump_y - 34 * u), stoop: 0.45 };
    case 'settling':
      return overChamber(pit.settling, h, worker.tool === 'shovel' ? pit.settling.deposit : pit.settling.fluid + 2, -1);
    case 'suction':
      return overChamber(pit.suction, h, worker.tool === 'shovel' ? pit.suction.deposit : pit.suction.fluid + 2, -1);
    case 'stick': {
      const x = pit.suction.left + (pit.suction.right - pit.suction.left) * 0.82;
      const y = ground - 0.18 * place.bank_pxm;
      return { ...upright(x + 0.26 * h, -1, x, y), stoop: 0.8 };
    }
    case 'strainer': {
      const y = ground - 0.16 * h;
      return { ...upright(pit.strainer_x - 0.24 * h, 1, pit.strainer_x, y, 0.03), stoop: 0.85 };
    }
    case 'channel': {
      const x = (pit.settling.right + pit.channelRight) / 2;
      const y = ground - 0.06 * h;
      return { x: x - 0.26 * h, face: 1, stoop: 1, hands: [x - 0.05 * h, y, x, y], end: [x + 0.02 * h, y + 0.03 * h] };
    }
    case 'bank':
      return upright(pit.suction.left - 0.02 * h, -1, pit.suction.left - 0.2 * h, ground - 0.55 * h);
    case 'idle': {
      const wide = pit.settling.right - pit.settling.left;
      const x = pit.settling.left + wide * 0.72 - nth * Math.max(0.5 * wide, APART * h);
      return {
        x,
        face: 1,
        stoop: 0,
        hands: [x + 0.1 * h, ground - 0.46 * h, x - 0.1 * h, ground - 0.46 * h],
        end: [x, ground],
      };
    }
  }
}
