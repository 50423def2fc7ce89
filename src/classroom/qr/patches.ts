// Where in a black and white picture codes may be: patches full of black beside white, apart from one another.

import type { Box, Grey } from './clean';

/** The picture is looked at in squares of so many dots. */
const CELL = 8;
/** A patch is at least so many dots wide and high, and at most so many times as wide as high or the other way. */
const LEAST = 60;
const LONGEST_ratio = 1.8;
/** More patches nobody looks through. */
const MOST = 12;
/** Half the width of a line that is no code, cells. */
const LINE = 1;

/** Cells of the picture, by rows: 1 where something is going on. */
interface Cells {
  readonly busy: Uint8Array;
  readonly columns: number;
  readonly rows: number;
}

/** Cells in which black meets white. */
function busyCells({ dots, width, height }: Grey): Cells {
  const [columns, rows] = [Math.ceil(width / CELL), Math.ceil(height / CELL)];
  const busy = new Uint8Array(columns * rows);
  for (let y = 0; y < height; y++)
    for (let x = 1; x < width; x++)
      if (dots[y * width + x] !== dots[y * width + x - 1])
        busy[Math.floor(y / CELL) * columns + Math.floor(x / CELL)] = 1;
  return { busy, columns, rows };
}

/** Widened (1) or narrowed (0) by so many cells to each side: a cell becomes `what` where one near it is. */
function spread({ busy, columns, rows }: Cells, what: 0 | 1, reach: number): Cells {
  let from = busy;
  for (const [step, count] of [
    [1, columns],
    [columns, rows],
  ] as const) {
    const to = Uint8Array.from(from);
    for (let cell = 0; cell < from.length; cell++) {
      if (from[cell] !== what) continue;
      const place = step === 1 ? cell % columns : Math.floor(cell / columns);
      const [first, last] = [Math.max(0, place - reach), Math.min(count - 1, place + reach)];
      for (let at = first; at <= last; at++) to[cell + (at - place) * step] = what;
    }
    from = to;
  }
  return { busy: from, columns, rows };
}

/** Gaps of twice so many cells closed, then lines away that are no wider than a few cells: the edge of a sheet, writing. */
function gathered(cells: Cells, reach: number): Cells {
  const closed = spread(spread(cells, 1, reach), 0, reach);
  return spread(spread(closed, 0, LINE), 1, LINE);
}

/** The busy cells that hang together, as boxes of cells. Marks them as seen. */
function boxAround(busy: Uint8Array, columns: number, rows: number, first: number): Box {
  let [left, top, right, bottom] = [columns, rows, 0, 0];
  const waiting = [first];
  busy[first] = 0;
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    const [x, y] = [cell % columns, Math.floor(cell / columns)];
    [left, right] = [Math.min(left, x), Math.max(right, x + 1)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y + 1)];
    for (const [nextX, nextY] of [
      [x - 1, y],
      [x + 1, y],
      [x, y - 1],
      [x, y + 1],
    ] as const) {
      const next = nextY * columns + nextX;
      if (nextX < 0 || nextY < 0 || nextX >= columns || nextY >= rows || busy[next] === 0) continue;
      busy[next] = 0;
      waiting.push(next);
    }
  }
  return { left, top, right, bottom };
}

/** Boxes of dots, the largest first. `reach`: gaps of up to twice so many cells do not part a patch. */
export function patchesIn(picture: Grey, reach: number): Box[] {
  const { busy, columns, rows } = gathered(busyCells(picture), reach);
  const boxes: Box[] = [];
  for (let cell = 0; cell < busy.length; cell++) {
    if (busy[cell] === 0) continue;
    const { left, top, right, bottom } = boxAround(busy, columns, rows, cell);
    boxes.push({
      left: Math.max(0, left - 1) * CELL,
      top: Math.max(0, top - 1) * CELL,
      right: Math.min(picture.width, (right + 1) * CELL),
      bottom: Math.min(picture.height, (bottom + 1) * CELL),
    });
  }
  const wide = ({ left, right }: Box): number => right - left;
  const high = ({ top, bottom }: Box): number => bottom - top;
  return boxes
    .filter((box) => Math.min(wide(box), high(box)) >= LEAST)
    .filter((box) => Math.max(wide(box), high(box)) <= Math.min(wide(box), high(box)) * LONGEST_ratio)
    .sort((a, b) => wide(b) * high(b) - wide(a) * high(a))
    .slice(0, MOST);
}
