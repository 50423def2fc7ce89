// Delivery hose from the pump up to the swivel, stiff under pressure and slack without; suction hose down to the strainer.

import { Container, Graphics } from 'pixi.js';
import { gearShape } from './gear';
import { createMemory, type Part, type Scene } from './part';
import { pitShape } from './pitShape';
import type { CutawayView } from './shown';
import { drawHose, type HosePath } from './strokes';

export function createHoses(): Part {
  const layer = new Container();
  const delivery = new Graphics();
  const suction = new Graphics();
  layer.addChild(suction, delivery);
  const memory = createMemory(4);

  function paths(view: CutawayView, scene: Scene): [HosePath, HosePath] {
    const { place, bit_m } = scene;
    const gear = gearShape(view, place, bit_m);
    const pit = pitShape(view, place);
    const u = place.gear_px;
    const reach = gear.gooseneck_x - gear.outlet_x;
    const stiff = Math.min(1, view.pump.throttle_frac * 1.4) * (view.pump.flow_m3s > 0 ? 1 : 0.4);
    const top = Math.min(gear.gooseneck_y, gear.outlet_y) - 38 * u;
    // Slack it hangs down from the swivel and comes in low.
    const low = gear.outlet_y - 8 * u;
    const hang = 24 * u + 0.75 * (gear.outlet_y - gear.gooseneck_y);
    const up: HosePath = {
      x1: gear.outlet_x,
      y1: gear.outlet_y,
      cx1: gear.outlet_x + 2 * u,
      cy1: low + (top - low) * stiff,
      cx2: gear.gooseneck_x - reach * 0.42,
      cy2: gear.gooseneck_y + hang - (hang + 22 * u) * stiff,
      x2: gear.gooseneck_x,
      y2: gear.gooseneck_y,
    };
    const strainerTop = pit.strainer_y - Math.max(9, 0.17 * place.bank_pxm);
    const down: HosePath = {
      x1: gear.inlet_x,
      y1: gear.inlet_y,
      cx1: gear.inlet_x + 26 * u,
      cy1: gear.inlet_y - 2 * u,
      cx2: pit.strainer_x,
      cy2: place.ground_y - 16 * u,
      x2: pit.strainer_x,
      y2: strainerTop + 1,
    };
    return [up, down];
  }

  /** A tear near the swivel: two short marks, and under pressure a fan of drops that fall to the ground. */
  function drawTear(up: HosePath, view: CutawayView, { look, place }: Scene): void {
    const u = place.gear_px;
    const x = up.x2 - 3 * u;
    const y = up.y2 + 2 * u;
    delivery.moveTo(x - 3 * u, y - 4 * u).lineTo(x + u, y + 4 * u);
    delivery.moveTo(x + u, y - 4 * u).lineTo(x - 3 * u, y + 4 * u);
    delivery.stroke({ color: look.accent, width: Math.max(1.4, 2 * u), cap: 'round' });
    if (!(view.pump.flow_m3s > 0)) return;
    for (let i = 0; i < 5; i++) {
      const reach = (10 + 9 * i) * u;
      delivery.moveTo(x, y).quadraticCurveTo(x - reach * 0.7, y - (14 - 2 * i) * u, x - reach, y + (10 + 4 * i) * u);
    }
    delivery.stroke({ color: look.water, width: Math.max(1.2, 1.6 * u), cap: 'round' });
  }

  function redraw(view: CutawayView, scene: Scene): void {
    const { look, place } = scene;
    const [up, down] = paths(view, scene);
    const width = Math.max(3.2, 6.6 * place.gear_px);
    delivery.clear();
    suction.clear();
    if (view.pit.dug) drawHose(suction, down, width, look.ink, look.hose, look.hoseLight);
    if (view.stem.out) return;
    drawHose(delivery, up, width, look.ink, look.hose, look.hoseLight);
    if (view.pump.lost_frac > 0) drawTear(up, view, scene);
  }

  return {
    layer,
    draw(_view, scene) {
      if (scene.fresh) memory(-1, -1, -1, -1);
    },
    move(view, scene) {
      const { pump, pit } = view;
      if (
        memory(
          scene.bit_m,
          view.stem.rods,
          Math.round(pump.throttle_frac * 20) + (pump.flow_m3s > 0 ? 100 : 0) + (pump.lost_frac > 0 ? 200 : 0),
          pit.strainer_m,
        )
      ) {
        redraw(view, scene);
      }
    },
    thingAt(view, scene, x, y) {
      const near = Math.max(7, 6 * scene.place.gear_px);
      const [up, down] = paths(view, scene);
      if (!view.stem.out && distanceTo(up, x, y) < near) return 'deliveryHose';
      return view.pit.dug && distanceTo(down, x, y) < near ? 'suctionHose' : null;
    },
  };
}

function distanceTo(p: HosePath, x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i <= 40; i++) {
    const s = i / 40;
    const r = 1 - s;
    const px = r * r * r * p.x1 + 3 * r * r * s * p.cx1 + 3 * r * s * s * p.cx2 + s * s * s * p.x2;
    const py = r * r * r * p.y1 + 3 * r * r * s * p.cy1 + 3 * r * s * s * p.cy2 + s * s * s * p.y2;
    least = Math.min(least, Math.hypot(px - x, py - y));
  }
  return least;
}
