// The crew at work: as many people as are on the site, each where the work is. Bodies stand behind the gear, hands before it;
// who waits stands before the hose.
// Nobody moves by himself: the hand at the winch goes with the crank, the hands at the drive with the stem.

import { Container, Graphics } from 'pixi.js';
import { heightOf_px, stanceOf } from './crewPlace';
import { drawBody, drawHands } from './figure';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView } from './shown';

export interface CrewParts {
  bodies: Part;
  hands: Part;
}

export function createCrew(): CrewParts {
  const behind = new Container();
  const before = new Container();
  const bodies = new Graphics();
  const hands = new Graphics();
  behind.addChild(bodies);
  before.addChild(hands);
  const memory = createMemory(4);

  /** A figure that changes when somebody goes elsewhere or takes up something else. */
  function markOf({ crew }: CutawayView): number {
    let mark = crew.away;
    for (const { post, tool } of crew.workers) {
      for (let i = 0; i < post.length; i++) mark = (mark * 31 + post.charCodeAt(i)) % 1e9;
      for (let i = 0; i < tool.length; i++) mark = (mark * 37 + tool.charCodeAt(i)) % 1e9;
    }
    return mark;
  }

  function redraw(view: CutawayView, { place, look, bit_m }: Scene): void {
    bodies.clear();
    hands.clear();
    if (place.ground_y < 0) return;
    const h = heightOf_px(place);
    const cloths = [look.waterBand, look.tank, look.grass, look.polymer];
    let idle = 0;
    view.crew.workers.forEach((worker, i) => {
      const waits = worker.post === 'idle';
      const stance = stanceOf(view, place, bit_m, worker, waits ? idle++ : 0);
      const cloth = cloths[i % cloths.length]!;
      drawBody(waits ? hands : bodies, look, stance, place.ground_y, h, cloth);
      drawHands(hands, look, stance, worker.tool, place.ground_y, h, cloth);
    });
  }

  function update(view: CutawayView, scene: Scene): void {
    const { pit } = view;
    const fluid = Math.round((pit.settling.level_m + 2 * pit.suction.level_m + pit.settling.deposit_m) * 100);
    // Only who holds the drive, the crank or the steel goes along with it.
    const follows = view.crew.workers.some(({ post }) => post === 'handle' || post === 'winch');
    if (memory(markOf(view), fluid, follows ? Math.round(scene.bit_m * scene.place.depth_pxm * 8) : 0, view.stem.rods))
      redraw(view, scene);
  }

  return {
    bodies: {
      layer: behind,
      draw(view, scene) {
        if (scene.fresh) memory(Number.NaN, 0, 0, 0);
        update(view, scene);
      },
      move: update,
      thingAt(view, { place, bit_m }, x, y) {
        const h = heightOf_px(place);
        if (y > place.ground_y || y < place.ground_y - h) return null;
        let idle = 0;
        for (const worker of view.crew.workers) {
          const stance = stanceOf(view, place, bit_m, worker, worker.post === 'idle' ? idle++ : 0);
          if (Math.abs(x - stance.x) < Math.max(6, 0.12 * h)) return 'crew';
        }
        return null;
      },
    },
    hands: { layer: before, draw() {} },
  };
}
