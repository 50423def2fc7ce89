// Where things of the section stand on the paper: one depth scale for the ground and for the well, words that never cover one another.

export interface Frame {
  /** Width and height of the drawing, and the size of its letters, in one unit. */
  readonly width: number;
  readonly height: number;
  readonly em: number;
}

export interface SectionPlace extends Frame {
  /** Ground level, and how long a metre is. */
  readonly ground_y: number;
  readonly perMetre: number;
  readonly shown_m: number;
  readonly step_m: number;
  /** Right ends of the figures of depth and of the minutes; left edge and width of the column. */
  readonly scale_x: number;
  readonly minutes_x: number;
  readonly column_x: number;
  readonly column: number;
  /** Words of the layers, from here as far as so much; no room, no words. */
  readonly words_x: number;
  readonly wordsRoom: number;
  /** Middle of the well, half the width of the hole, and where its words begin. */
  readonly well_x: number;
  readonly halfHole: number;
  readonly wellWords_x: number;
  readonly wellRoom: number;
  readonly wordy: boolean;
}

const STEPS_m = [0.5, 1, 2, 5, 10];
/** Room above the ground for heads and for what stands up, and below the deepest thing. */
const ABOVE_em = 5.2;
const BELOW_em = 0.8;
/** Narrower than so many letters, the words stand in a list below instead. */
export const WORDY_EMS = 44;

export function placeSection(frame: Frame, deepest_m: number): SectionPlace {
  const { width, height, em } = frame;
  const wordy = width >= WORDY_EMS * em;
  const shown_m = Math.max(2, deepest_m);
  const ground_y = ABOVE_em * em;
  const perMetre = (height - ground_y - BELOW_em * em) / shown_m;
  const step_m = STEPS_m.find((step) => step * perMetre >= 1.8 * em) ?? 20;
  const scale_x = 2.4 * em;
  const minutes_x = scale_x + 3.2 * em;
  const column_x = minutes_x + 0.5 * em;
  const column = 4.2 * em;
  const words_x = column_x + column + 2.6 * em;
  const halfHole = 2.2 * em;
  const well_x = wordy ? words_x + 0.36 * (width - words_x) + 3 * em : words_x + 0.5 * (width - words_x);
  const wellWords_x = well_x + halfHole + 1.6 * em;
  return {
    ...frame,
    ground_y,
    perMetre,
    shown_m,
    step_m,
    scale_x,
    minutes_x,
    column_x,
    column,
    words_x,
    wordsRoom: well_x - halfHole - 1.4 * em - words_x,
    well_x,
    halfHole,
    wellWords_x,
    wellRoom: width - wellWords_x,
    wordy,
  };
}

export interface Said {
  readonly y: number;
  readonly words: string;
}

export interface Placed {
  /** Where the thing is, and the base line of the first of its lines. */
  readonly y: number;
  readonly base_y: number;
  readonly lines: readonly string[];
}

/** A letter is taken as so much of the text's size wide: an upper middle of plain fonts. */
const LETTER_em = 0.54;
const LINE_em = 1.15;

/** Words broken into lines that fit the room; a word longer than the room is broken too. */
export function wrapped(words: string, room: number, em: number): string[] {
  const most = Math.max(4, Math.floor(room / (LETTER_em * em)));
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length <= most) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (line.length > most) {
      lines.push(line.slice(0, most));
      line = line.slice(most);
    }
  }
  return line === '' ? lines : [...lines, line];
}

/**
 * Words at their things, in the order of depth, pushed down where they would cover one another and up again where they would
 * leave the paper. Those that find no room at all are left out, the last ones first.
 */
export function placeWords(said: readonly Said[], room: number, em: number, top: number, bottom: number): Placed[] {
  const line = LINE_em * em;
  const blocks = [...said].sort((a, b) => a.y - b.y).map(({ y, words }) => ({ y, lines: wrapped(words, room, em) }));
  const heightOf = (list: typeof blocks): number => list.reduce((sum, { lines }) => sum + lines.length * line, 0);
  while (blocks.length > 0 && heightOf(blocks) > bottom - top) blocks.pop();
  const tops: number[] = [];
  let free = top;
  for (const { y, lines } of blocks) {
    tops.push(Math.max(free, y - 0.6 * em));
    free = tops[tops.length - 1]! + lines.length * line;
  }
  let limit = bottom;
  for (let i = blocks.length - 1; i >= 0; i--) {
    tops[i] = Math.min(tops[i]!, limit - blocks[i]!.lines.length * line);
    limit = tops[i]!;
  }
  return blocks.map(({ y, lines }, i) => ({ y, base_y: tops[i]! + 0.9 * em, lines }));
}
