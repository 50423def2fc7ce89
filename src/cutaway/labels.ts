// Words in the drawing. They are kept from one drawing to the next, by the part that put them; a halo in the ground's
// colour keeps them legible over patterns.

import { Container, Text, TextStyle } from 'pixi.js';
import type { Palette } from './palette';

export type LabelTone = 'ink' | 'quiet' | 'accent' | 'water';

export interface LabelLook {
  tone?: LabelTone;
  strong?: boolean;
  italic?: boolean;
  /** 0 left edge at x, 0.5 middle, 1 right edge; the same for y. */
  ax?: number;
  ay?: number;
  /** Share of the normal size. */
  size?: number;
  halo?: string;
  /** Words that would be wider are squeezed a little, then left out. */
  room_px?: number;
}

export interface Labels {
  readonly layer: Container;
  dress(look: Palette, font: string, text_px: number): void;
  /** From here to close() words belong to this part; those of it that are not put again go away. */
  open(part: string): void;
  /** Returns the width that the words take, 0 where they were left out. */
  put(name: string, words: string, x: number, y: number, how?: LabelLook): number;
  close(): void;
}

interface Kept {
  text: Text;
  styleKey: string;
  used: boolean;
}

const LEAST_SQUEEZE = 0.8;
const LEAST_TEXT_px = 10.5;

export function createLabels(resolution: number): Labels {
  const layer = new Container();
  const parts = new Map<string, Map<string, Kept>>();
  const styles = new Map<string, TextStyle>();
  let current = new Map<string, Kept>();
  let look: Palette;
  let font = 'sans-serif';
  let text_px = 13;

  function colourOf(tone: LabelTone): string {
    if (tone === 'accent') return look.accentText;
    if (tone === 'water') return look.waterText;
    return tone === 'quiet' ? look.quiet : look.ink;
  }

  function styleFor(how: LabelLook): [string, TextStyle] {
    const fill = colourOf(how.tone ?? 'ink');
    const size = Math.max(LEAST_TEXT_px, text_px * (how.size ?? 1));
    const key = [fill, size, how.strong, how.italic, how.halo, font].join('|');
    let style = styles.get(key);
    if (!style) {
      style = new TextStyle({
        fontFamily: font,
        fontSize: size,
        fontWeight: how.strong ? '600' : '400',
        fontStyle: how.italic ? 'italic' : 'normal',
        fill,
        ...(how.halo ? { stroke: { color: how.halo, width: 3.5, join: 'round' } } : {}),
        padding: 3,
      });
      styles.set(key, style);
    }
    return [key, style];
  }

  function keep(name: string, words: string, how: LabelLook): Kept {
    const [key, style] = styleFor(how);
    let one = current.get(name);
    if (!one) {
      one = { text: new Text({ text: words, style, resolution }), styleKey: key, used: true };
      layer.addChild(one.text);
      current.set(name, one);
    }
    if (one.styleKey !== key) {
      one.text.style = style;
      one.styleKey = key;
    }
    if (one.text.text !== words) one.text.text = words;
    return one;
  }

  return {
    layer,
    dress(newLook, newFont, newText_px) {
      look = newLook;
      font = newFont;
      text_px = newText_px;
    },
    open(part) {
      let kept = parts.get(part);
      if (!kept) parts.set(part, (kept = new Map()));
      current = kept;
      for (const one of kept.values()) one.used = false;
    },
    put(name, words, x, y, how = {}) {
      const one = keep(name, words, how);
      one.text.scale.x = 1;
      const full_px = one.text.width;
      const squeeze = how.room_px !== undefined && full_px > how.room_px ? how.room_px / full_px : 1;
      one.used = squeeze >= LEAST_SQUEEZE;
      if (!one.used) return 0;
      one.text.scale.x = squeeze;
      one.text.anchor.set(how.ax ?? 0, how.ay ?? 0.5);
      one.text.position.set(Math.round(x), Math.round(y));
      return full_px * squeeze;
    },
    close() {
      for (const one of current.values()) one.text.visible = one.used;
    },
  };
}
