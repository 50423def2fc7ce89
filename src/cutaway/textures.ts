// The few small pictures that the drawing repeats: hatch of the closed ground, patterns of the kinds, grains.

import { CanvasSource, DOMAdapter, Texture, type ICanvas } from 'pixi.js';
import { paintTile, TILES, type GroundInk, type PatternName } from '../charts/patterns';
import type { Palette } from './palette';
import { scatter } from './scatter';

const SHARP = 2;
/** Width of a stone's and of a speck's picture, px; sprites scale them to the drawn size. */
export const STONE_PX = 32;
export const SPECK_PX = 6;
export const GRAIN_SHAPES = 6;
/** From this drawn size on a grain shows its shape. */
export const STONE_FROM_px = 3.6;

export interface Textures {
  closed: Texture;
  pattern: Record<PatternName, Texture>;
  /** Round dots for grains too small to show a shape, by fill. */
  specks: Texture[];
  /** Outlined stones. */
  stones: Texture[];
  destroy(): void;
}

function canvasOf(width: number, height: number): [ICanvas, CanvasRenderingContext2D] {
  const canvas = DOMAdapter.get().createCanvas(Math.round(width * SHARP), Math.round(height * SHARP));
  const context = canvas.getContext('2d') as CanvasRenderingContext2D | null;
  if (!context) throw new Error('no 2D canvas');
  context.scale(SHARP, SHARP);
  return [canvas, context];
}

function textureOf(canvas: ICanvas, repeat: boolean): Texture {
  return new Texture({
    source: new CanvasSource({
      resource: canvas,
      resolution: SHARP,
      addressMode: repeat ? 'repeat' : 'clamp-to-edge',
      scaleMode: 'linear',
    }),
  });
}

function closedGround(look: Palette): Texture {
  const size = 48;
  const [canvas, context] = canvasOf(size, size);
  context.fillStyle = look.closed;
  context.fillRect(0, 0, size, size);
  context.strokeStyle = look.hatch;
  context.lineCap = 'round';
  // Pen strokes down to the right; each is drawn three times so that it goes on across the tile's seams.
  for (let i = 0; i < 4; i++) {
    context.lineWidth = i % 2 === 0 ? 2 : 1.2;
    for (const shift of [-size, 0, size]) {
      context.beginPath();
      context.moveTo(shift + i * 12, 0);
      context.lineTo(shift + i * 12 + size, size);
      context.stroke();
    }
  }
  return textureOf(canvas, true);
}

function speck(fill: string, line: string): Texture {
  const [canvas, context] = canvasOf(SPECK_PX, SPECK_PX);
  const middle = SPECK_PX / 2;
  context.fillStyle = line;
  context.beginPath();
  context.arc(middle, middle, middle, 0, 2 * Math.PI);
  context.fill();
  context.fillStyle = fill;
  context.beginPath();
  context.arc(middle - 0.25, middle - 0.25, middle - 0.8, 0, 2 * Math.PI);
  context.fill();
  return textureOf(canvas, false);
}

function stone(shape: number, fill: string, line: string): Texture {
  const [canvas, context] = canvasOf(STONE_PX, STONE_PX);
  const corners = 9;
  context.beginPath();
  for (let i = 0; i <= corners; i++) {
    const angle = (2 * Math.PI * i) / corners;
    const reach = STONE_PX * (0.4 + 0.085 * scatter(shape, i % corners));
    const x = STONE_PX / 2 + reach * Math.cos(angle);
    const y = STONE_PX / 2 + reach * (0.74 + 0.2 * scatter(shape, 77)) * Math.sin(angle);
    if (i === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  }
  context.fillStyle = fill;
  context.fill();
  context.lineJoin = 'round';
  context.lineWidth = 2.2;
  context.strokeStyle = line;
  context.stroke();
  context.lineWidth = 1.4;
  context.globalAlpha = 0.35;
  context.beginPath();
  context.moveTo(STONE_PX * 0.36, STONE_PX * 0.62);
  context.quadraticCurveTo(STONE_PX * 0.55, STONE_PX * 0.72, STONE_PX * 0.7, STONE_PX * 0.55);
  context.stroke();
  return textureOf(canvas, false);
}

export function createTextures(look: Palette, ink: GroundInk): Textures {
  const pattern = {} as Record<PatternName, Texture>;
  for (const name of Object.keys(TILES) as PatternName[]) {
    const [canvas, context] = canvasOf(TILES[name].width, TILES[name].height);
    paintTile(context, name, ink);
    pattern[name] = textureOf(canvas, true);
  }
  const fills = look.grainFills;
  const textures: Textures = {
    closed: closedGround(look),
    pattern,
    specks: fills.map((fill) => speck(fill, look.grainLine)),
    stones: Array.from({ length: GRAIN_SHAPES }, (_, i) =>
      stone(i, fills[i % fills.length] ?? look.heap, look.grainLine),
    ),
    destroy() {
      for (const texture of [textures.closed, ...Object.values(pattern), ...textures.specks, ...textures.stones]) {
        texture.destroy(true);
      }
    },
  };
  return textures;
}
