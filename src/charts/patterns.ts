// Patterns of the kinds of ground as small tiles of marks, after the style of FGDC-STD-013-2006 section 37, drawn by
// our own hand: rings and dots for gravel (601), dots for sand (607, 608), dots and dashes for silty sand (612) and
// silt (616), dashes for clay (620), tufts for peat (657); own marks where the standard has none for us.
// The same tiles fill SVG columns and the textures of the cutaway.

export type PatternName =
  | 'topsoil'
  | 'clay'
  | 'silt'
  | 'siltySand'
  | 'fineSand'
  | 'mediumSand'
  | 'coarseSand'
  | 'gravel'
  | 'cobbles'
  | 'peat'
  | 'crust'
  | 'rock'
  | 'unknown';

export type Mark =
  | { kind: 'dot'; x: number; y: number; r: number }
  | { kind: 'dash'; x1: number; y1: number; x2: number; y2: number; w: number }
  | { kind: 'ring'; x: number; y: number; rx: number; ry: number; w: number };

export interface Tile {
  width: number;
  height: number;
  marks: readonly Mark[];
}

const dot = (x: number, y: number, r: number): Mark => ({ kind: 'dot', x, y, r });
const dash = (x1: number, y1: number, x2: number, y2: number, w = 1.1): Mark => ({ kind: 'dash', x1, y1, x2, y2, w });
const ring = (x: number, y: number, rx: number, ry: number, w = 1): Mark => ({ kind: 'ring', x, y, rx, ry, w });

/** Marks stay inside their tile: what crosses an edge would be cut off at the seam. */
export const TILES: Record<PatternName, Tile> = {
  topsoil: {
    width: 24,
    height: 16,
    marks: [
      dash(3, 7, 3, 3),
      dash(3, 7, 6, 4),
      dash(15, 14, 15, 10),
      dash(15, 14, 12, 11),
      dot(10, 3, 0.8),
      dot(20, 6, 0.8),
      dot(7, 12, 0.8),
      dot(21, 13, 0.6),
    ],
  },
  clay: { width: 20, height: 12, marks: [dash(2, 3, 11, 3), dash(14, 3, 18, 3), dash(1, 9, 5, 9), dash(8, 9, 17, 9)] },
  // Shorter dashes and finer dots than silty sand, so that the two are told apart without their colours.
  silt: {
    width: 16,
    height: 10,
    marks: [
      dash(1.5, 2.5, 4.5, 2.5),
      dot(8, 2.5, 0.6),
      dash(10.5, 2.5, 13.5, 2.5),
      dot(3, 7.5, 0.6),
      dash(6.5, 7.5, 9.5, 7.5),
      dot(13, 7.5, 0.6),
    ],
  },
  siltySand: {
    width: 20,
    height: 16,
    marks: [
      dot(3, 3, 0.9),
      dot(8, 2, 0.9),
      dash(12, 3, 18, 3),
      dot(5, 8, 0.9),
      dot(13, 8, 0.9),
      dot(17, 11, 0.9),
      dash(2, 13, 8, 13),
      dot(12, 14, 0.9),
    ],
  },
  fineSand: { width: 10, height: 10, marks: [dot(2.5, 2.5, 0.75), dot(7.5, 7.5, 0.75)] },
  mediumSand: { width: 13, height: 13, marks: [dot(3, 3, 1.1), dot(9.5, 9, 1.1), dot(10, 2, 0.6)] },
  coarseSand: { width: 16, height: 16, marks: [dot(4, 4, 1.7), dot(12, 11, 1.7), dot(12, 3, 0.9), dot(4, 12.5, 0.9)] },
  gravel: {
    width: 28,
    height: 24,
    marks: [
      ring(7, 7, 5, 3.6),
      ring(20, 16, 5.6, 4.2),
      dot(19, 5, 1.3),
      dot(5, 17, 1.3),
      dot(12, 21, 0.9),
      dot(25, 8, 0.9),
    ],
  },
  cobbles: {
    width: 40,
    height: 30,
    marks: [ring(11, 9, 8.5, 6.2, 1.2), ring(29, 20, 9, 7, 1.2), ring(10, 23, 4, 3), ring(30, 6, 4, 3)],
  },
  peat: {
    width: 26,
    height: 16,
    marks: [
      dash(3, 6, 9, 6),
      dash(6, 6, 6, 2),
      dash(6, 6, 4, 3),
      dash(6, 6, 8, 3),
      dash(16, 14, 22, 14),
      dash(19, 14, 19, 10),
      dash(19, 14, 17, 11),
      dash(19, 14, 21, 11),
    ],
  },
  crust: {
    width: 24,
    height: 18,
    marks: [ring(6, 5, 3, 2.4), dash(12, 3, 20, 6), dash(3, 13, 10, 11), ring(18, 13, 3.4, 2.6), dot(13, 9, 0.9)],
  },
  rock: {
    width: 28,
    height: 22,
    marks: [
      dash(3, 3, 9, 8),
      dash(9, 3, 3, 8),
      dash(16, 5, 25, 5),
      dash(4, 16, 13, 16),
      dash(18, 13, 24, 18),
      dash(24, 13, 18, 18),
    ],
  },
  unknown: { width: 16, height: 16, marks: [] },
};

/** Pattern of every name that a kind of ground goes by: soils of the model and the learner's words. */
const BY_KIND: Record<string, PatternName> = {
  topsoil: 'topsoil',
  lateriticCrust: 'crust',
  clay: 'clay',
  softClay: 'clay',
  firmClay: 'clay',
  stiffClay: 'clay',
  swellingClay: 'clay',
  silt: 'silt',
  siltySand: 'siltySand',
  fineSand: 'fineSand',
  mediumSand: 'mediumSand',
  coarseSand: 'coarseSand',
  gravel: 'gravel',
  fineGravel: 'gravel',
  coarseGravel: 'gravel',
  cobbles: 'cobbles',
  peat: 'peat',
  weatheredRock: 'rock',
};

export function patternOf(kind: string): PatternName {
  return BY_KIND[kind] ?? 'unknown';
}

export interface GroundInk {
  /** Fill by pattern name, and the colour of the marks. */
  fill: Record<PatternName, string>;
  mark: string;
}

const DAY: GroundInk = {
  fill: {
    topsoil: '#b49a74',
    clay: '#b7a08d',
    silt: '#d5c8ac',
    siltySand: '#dfd0a6',
    fineSand: '#eddfb4',
    mediumSand: '#e7cf90',
    coarseSand: '#dcb869',
    gravel: '#cbc2b1',
    cobbles: '#b9b5ab',
    peat: '#8f7a63',
    crust: '#c99a7a',
    rock: '#a9aba8',
    unknown: '#efe6d2',
  },
  mark: '#2b2c29',
};

const NIGHT: GroundInk = {
  fill: {
    topsoil: '#4d3f2b',
    clay: '#4b3f38',
    silt: '#57503f',
    siltySand: '#61573a',
    fineSand: '#6e623e',
    mediumSand: '#74612f',
    coarseSand: '#7b5d22',
    gravel: '#55524b',
    cobbles: '#494a49',
    peat: '#352b22',
    crust: '#64402d',
    rock: '#3e4344',
    unknown: '#262420',
  },
  mark: '#e6decb',
};

const SUN: GroundInk = { fill: { ...DAY.fill, unknown: '#ffffff' }, mark: '#000000' };

export function groundInk(theme: string | null | undefined): GroundInk {
  return theme === 'night' ? NIGHT : theme === 'sun' ? SUN : DAY;
}

/** Draws one tile on a 2D canvas; the caller has scaled the context to the tile's units. */
export function paintTile(context: CanvasRenderingContext2D, name: PatternName, ink: GroundInk): void {
  const tile = TILES[name];
  context.fillStyle = ink.fill[name];
  context.fillRect(0, 0, tile.width, tile.height);
  context.fillStyle = ink.mark;
  context.strokeStyle = ink.mark;
  context.lineCap = 'round';
  for (const mark of tile.marks) {
    context.beginPath();
    if (mark.kind === 'dot') {
      context.arc(mark.x, mark.y, mark.r, 0, 2 * Math.PI);
      context.fill();
    } else if (mark.kind === 'dash') {
      context.lineWidth = mark.w;
      context.moveTo(mark.x1, mark.y1);
      context.lineTo(mark.x2, mark.y2);
      context.stroke();
    } else {
      context.lineWidth = mark.w;
      context.ellipse(mark.x, mark.y, mark.rx, mark.ry, 0, 0, 2 * Math.PI);
      context.stroke();
    }
  }
}
