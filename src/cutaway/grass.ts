// Grass that the wind brings into the pit: it floats on the suction chamber, and what has come to the strainer hangs there.

import type { Graphics } from 'pixi.js';
import type { Scene } from './part';
import { wallX, type PitShape } from './pitShape';
import { scatter } from './scatter';

/** How many there are. ASSUMED: enough to be seen, too few to hide the fluid. */
const BLADES = 8;
/** Share of the chamber's length in which the blades float: the stick at its side stays free. */
const AFLOAT_frac = 0.7;
/** Length of a blade on the bank's scale, m. ASSUMED. */
const BLADE_m = 0.09;

/** How many blades hang on the strainer: as large a part of all as is blocked. Worked value: .3 -> 2. */
export const caughtBlades = (blocked_frac: number): number => Math.round(BLADES * Math.min(1, blocked_frac));

export function drawGrass(pen: Graphics, shape: PitShape, blocked_frac: number, { look, place }: Scene): void {
  const { suction: box, strainer_x, strainer_y } = shape;
  const long = Math.max(5, BLADE_m * place.bank_pxm);
  const caught = caughtBlades(blocked_frac);
  const line = { color: look.grassDark, width: Math.max(1.2, 0.012 * place.bank_pxm), cap: 'round' as const };
  const left = wallX(box, box.fluid, -1) + 3;
  const room = (wallX(box, box.fluid, 1) - left) * AFLOAT_frac - long;
  for (let i = 0; i < BLADES; i++) {
    const bend = long * (0.12 + 0.2 * scatter(i, 63)) * (i % 2 === 0 ? 1 : -1);
    if (i < caught) {
      // It lies against the strainer, its loose end in the flow.
      const x = strainer_x + (scatter(i, 64) - 0.5) * 0.16 * place.bank_pxm;
      const y = strainer_y - scatter(i, 65) * 0.17 * place.bank_pxm;
      pen
        .moveTo(x, y)
        .quadraticCurveTo(x - long * 0.4, y - bend, x - long * (0.5 + 0.4 * scatter(i, 66)), y - bend * 0.4);
    } else if (box.deposit - box.fluid > 3) {
      const x = left + room * scatter(i, 61);
      const y = box.fluid - 0.5;
      pen.moveTo(x, y).quadraticCurveTo(x + long / 2, y - Math.abs(bend), x + long * (0.7 + 0.3 * scatter(i, 62)), y);
    }
  }
  pen.stroke(line);
}
