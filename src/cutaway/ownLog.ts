// The learner's own log beside the ruler: what has been written down, what has not, and where samples were taken.

import { Container, Graphics, TilingSprite } from 'pixi.js';
import { patternOf } from '../charts/patterns';
import { say, t } from '../words';
import { yOf } from './place';
import { createMemory, markOfLog, type Part, type Scene } from './part';
import type { CutawayView } from './shown';
import { dashedLine } from './strokes';

export function createOwnLog(): Part {
  const layer = new Container();
  const page = new Graphics();
  const fills: TilingSprite[] = [];
  const lines = new Graphics();
  layer.addChild(page, lines);
  const memory = createMemory(3);

  function drawEmpty(view: CutawayView, { place, look, labels }: Scene): void {
    const { log_x, log_px, height_px, text_px } = place;
    const top = yOf(place, 0);
    const reached = Math.min(height_px, yOf(place, view.stem.bottom_m));
    if (reached > top) page.rect(log_x, top, log_px, reached - top).fill(look.notLogged);
    page.rect(log_x, Math.max(0, reached), log_px, height_px).fill({ color: look.notLogged, alpha: 0.35 });
    const done_m = view.ownLog.reduce((deepest, one) => Math.max(deepest, one.to_m), 0);
    const blankTop = Math.max(0, yOf(place, done_m));
    if (reached - blankTop > text_px * 1.6) {
      labels.put(
        'notLogged',
        t('cutaway.notLogged'),
        log_x + log_px / 2,
        Math.min(blankTop + text_px * 1.2, (blankTop + reached) / 2),
        {
          tone: 'quiet',
          italic: true,
          ax: 0.5,
          size: 0.92,
          room_px: log_px - 4,
        },
      );
    }
    dashedLine(lines, log_x, Math.max(0, reached), log_x, height_px, 3, 4);
    dashedLine(lines, log_x + log_px, Math.max(0, reached), log_x + log_px, height_px, 3, 4);
    lines.stroke({ color: look.rule, width: 1 });
    lines.rect(log_x, top, log_px, Math.max(0, reached - top)).stroke({ color: look.ink, width: look.line_px });
    if (place.ground_y > text_px) {
      labels.put('ownLog', t('cutaway.ownLog'), log_x, place.ground_y - text_px * 0.95, { strong: true });
    }
  }

  function drawLogged(view: CutawayView, { place, look, textures, labels }: Scene): void {
    const { log_x, log_px, height_px, words_x, text_px, width_px } = place;
    let wordsDown = -Infinity;
    for (let i = 0; i < Math.max(view.ownLog.length, fills.length); i++) {
      const one = view.ownLog[i];
      const kept = fills[i];
      if (!one) {
        if (kept) kept.visible = false;
        continue;
      }
      const name = patternOf(one.kind);
      const fill = kept ?? new TilingSprite({ texture: textures.pattern[name] });
      if (!kept) {
        fills.push(fill);
        layer.addChildAt(fill, 1 + i);
      }
      const top = Math.max(0, Math.round(yOf(place, one.from_m)));
      const bottom = Math.min(height_px, Math.round(yOf(place, one.to_m)));
      fill.visible = bottom > top;
      if (!fill.visible) continue;
      fill.texture = textures.pattern[name];
      fill.position.set(log_x, top);
      fill.setSize(log_px, bottom - top);
      fill.tilePosition.set(0, place.ground_y - top);
      lines.rect(log_x, top, log_px, bottom - top).stroke({ color: look.ink, width: look.line_px });
      // Words stand at the top of their layer; where layers are thin they give way downwards, never onto each other.
      const y = Math.max(top + text_px * 0.7, wordsDown + text_px * 1.15);
      if (y < bottom + text_px && y < height_px - text_px * 0.4) {
        const words = say(`cutaway.kind.${one.kind}`);
        const how = { room_px: width_px - words_x - 3, halo: view.layers || place.zoom > 1 ? look.paper : look.closed };
        // Two words go on two lines where one line is too narrow and the layer is high enough.
        const broken = words.replace(' ', '\n');
        const tall = bottom - top > text_px * 2.1;
        if (labels.put(`own${i}`, words, words_x, y, how) === 0 && tall && broken !== words) {
          labels.put(`own${i}`, broken, words_x, y - text_px * 0.6, { ...how, ay: 0 });
          wordsDown = y + text_px * 1.1;
        } else {
          wordsDown = y;
        }
      }
    }
  }

  return {
    layer,
    draw(view, scene) {
      const { place, look, fresh } = scene;
      const reached_px = Math.round(view.stem.bottom_m * place.depth_pxm);
      if (!memory(reached_px, markOfLog(view.ownLog), view.samples_m.length) && !fresh) return;
      scene.labels.open('ownLog');
      page.clear();
      lines.clear();
      drawEmpty(view, scene);
      drawLogged(view, scene);
      const size = place.compact ? 3.2 : 4.4;
      for (const depth_m of view.samples_m) {
        const y = yOf(place, depth_m);
        if (y < 0 || y > place.height_px) continue;
        lines.circle(place.log_x, y, size).fill(look.paper).stroke({ color: look.ink, width: 1.3 });
        lines.circle(place.log_x, y, size * 0.35).fill(look.ink);
      }
      scene.labels.close();
    },
    thingAt(_view, { place }, x, y) {
      return y > place.ground_y && x >= place.log_x - 8 && x <= place.width_px ? 'ownLog' : null;
    },
  };
}
