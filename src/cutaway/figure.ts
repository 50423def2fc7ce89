// One person in the drawing's own plain manner: hat, cloth and limbs, no face. What stands in front of the gear (arms, hands
// and what they hold) is drawn apart from what stands behind it.

import type { Graphics } from 'pixi.js';
import { ARM, bonesOf, type Stance } from './crewPlace';
import type { Palette } from './palette';
import type { Tool } from './shown';

function limb(pen: Graphics, points: readonly number[], width: number, colour: string, ink: string): void {
  for (const [w, color] of [
    [width + 1.6, ink],
    [width, colour],
  ] as const) {
    pen.moveTo(points[0]!, points[1]!);
    for (let i = 2; i < points.length; i += 2) pen.lineTo(points[i]!, points[i + 1]!);
    pen.stroke({ width: w, color, cap: 'round', join: 'round' });
  }
}

export function drawBody(pen: Graphics, look: Palette, stance: Stance, ground: number, h: number, cloth: string): void {
  const { x, face } = stance;
  const { hip, shoulder, head } = bonesOf(stance, ground, h);
  const bend = 0.05 * h * (1 + 2 * stance.stoop);
  for (const foot of [-1, 1]) {
    const at = x + foot * 0.07 * h;
    const knee = [(hip[0] + at) / 2 + face * bend, (hip[1] + ground) / 2];
    limb(pen, [hip[0], hip[1], knee[0]!, knee[1]!, at, ground - 1], Math.max(2, 0.075 * h), look.hoseLight, look.ink);
  }
  limb(pen, [hip[0], hip[1], shoulder[0], shoulder[1]], Math.max(3.5, 0.17 * h), cloth, look.ink);
  const r = Math.max(2, 0.072 * h);
  pen.circle(head[0], head[1], r).fill(look.woodDark).stroke({ color: look.ink, width: 1 });
  // A straw hat against the sun.
  pen
    .ellipse(head[0], head[1] - r * 0.55, r * 1.9, r * 0.5)
    .fill(look.heap)
    .stroke({ color: look.ink, width: 1 });
  pen
    .roundRect(head[0] - r * 0.85, head[1] - r * 1.5, r * 1.7, r * 1.05, r * 0.5)
    .fill(look.heap)
    .stroke({ color: look.ink, width: 1 });
}

/** Elbow of an arm from shoulder to hand: it bends down, the more the nearer the hand. The hand comes only as far as the arm. */
function arm(shoulder: readonly [number, number], hx: number, hy: number, h: number): number[] {
  const dx = hx - shoulder[0];
  const dy = hy - shoulder[1];
  const far = Math.max(1, Math.sqrt(dx * dx + dy * dy));
  const long = Math.min(far, ARM * h);
  const ex = shoulder[0] + (dx * long) / far;
  const ey = shoulder[1] + (dy * long) / far;
  const half = (ARM * h) / 2;
  const sag = Math.sqrt(Math.max(0, half * half - (long * long) / 4));
  return [shoulder[0], shoulder[1], (shoulder[0] + ex) / 2, (shoulder[1] + ey) / 2 + sag, ex, ey];
}

export function drawHands(
  pen: Graphics,
  look: Palette,
  stance: Stance,
  tool: Tool,
  ground: number,
  h: number,
  cloth: string,
): void {
  drawTool(pen, look, stance, tool, h);
  const { shoulder } = bonesOf(stance, ground, h);
  const [x1, y1, x2, y2] = stance.hands;
  for (const [hx, hy] of [
    [x2, y2],
    [x1, y1],
  ] as const) {
    const points = arm(shoulder, hx, hy, h);
    limb(pen, points, Math.max(1.8, 0.06 * h), cloth, look.ink);
    pen
      .circle(points[4]!, points[5]!, Math.max(1.6, 0.042 * h))
      .fill(look.woodDark)
      .stroke({ color: look.ink, width: 0.9 });
  }
}

function drawTool(pen: Graphics, look: Palette, { hands, end, face }: Stance, tool: Tool, h: number): void {
  const [x, y] = hands;
  const thick = Math.max(1.6, 0.04 * h);
  switch (tool) {
    case 'shovel':
      limb(pen, [x - face * 0.1 * h, y - 0.18 * h, end[0], end[1] - 0.06 * h], thick, look.wood, look.ink);
      pen
        .poly([
          end[0] - 0.07 * h,
          end[1] - 0.1 * h,
          end[0] + 0.07 * h,
          end[1] - 0.1 * h,
          end[0] + 0.05 * h,
          end[1] + 0.04 * h,
          end[0] - 0.05 * h,
          end[1] + 0.04 * h,
        ])
        .fill(look.steel)
        .stroke({ color: look.ink, width: 1 });
      return;
    case 'pole':
      limb(pen, [x - face * 0.1 * h, y - 0.25 * h, end[0], end[1] + 0.16 * h], thick, look.wood, look.ink);
      return;
    case 'bucket': {
      const w = 0.11 * h;
      const by = Math.max(y + 0.06 * h, Math.min(end[1] - 0.1 * h, y + 0.5 * h));
      pen
        .moveTo(x - w, by)
        .quadraticCurveTo(x, by - 0.2 * h, x + w, by)
        .stroke({ color: look.ink, width: 1 });
      if (by > y + 0.1 * h)
        pen
          .moveTo(x, y)
          .lineTo(x, by - 0.09 * h)
          .stroke({ color: look.rope, width: 1.6 });
      pen
        .poly([x - w, by, x + w, by, x + w * 0.75, by + 0.17 * h, x - w * 0.75, by + 0.17 * h])
        .fill(look.steelLight)
        .stroke({ color: look.ink, width: 1 });
      return;
    }
    case 'sack':
      pen
        .roundRect(x - 0.08 * h, y - 0.12 * h, 0.16 * h, 0.16 * h, 0.04 * h)
        .fill(look.paper)
        .stroke({ color: look.ink, width: 1 });
      return;
    case 'sieve':
      pen
        .ellipse(end[0], end[1], 0.13 * h, 0.045 * h)
        .fill(look.steelLight)
        .stroke({ color: look.ink, width: 1.2 });
      return;
    case 'funnel':
      pen
        .poly([
          x - 0.1 * h,
          y - 0.1 * h,
          x + 0.1 * h,
          y - 0.1 * h,
          x + 0.02 * h,
          y + 0.06 * h,
          x + 0.02 * h,
          y + 0.14 * h,
          x - 0.02 * h,
          y + 0.14 * h,
          x - 0.02 * h,
          y + 0.06 * h,
        ])
        .fill(look.steelLight)
        .stroke({ color: look.ink, width: 1 });
      return;
    case 'tape':
      pen
        .moveTo(x, y)
        .lineTo(x, y + 0.3 * h)
        .stroke({ color: look.accent, width: 1.6 });
      return;
    case 'none':
  }
}
