// How much room the drawing has on the printed page: what the written words leave of it. Lengths in millimetres.
import type { RecordSheet } from '$lessons';
import type { RecordField } from '$sim';

/** Fields of the head, four in a row, and of the foot, three in a row. */
export const HEAD_FIELDS = [
  ['well', 'place', 'coordinates', 'datum'],
  ['owner', 'driller', 'use', 'permit'],
] as const satisfies readonly (readonly RecordField[])[];
export const FOOT_FIELDS = [
  ['siting', 'waterMet', 'drilling'],
  ['waterLook', 'laboratory', 'remarks'],
] as const satisfies readonly (readonly RecordField[])[];

/** Letters in a line of a field of the head and of the foot: wide letters, so that the page rather keeps room than lacks it. */
const HEAD_LETTERS = 29;
const FOOT_LETTERS = 40;
/** Height of the drawing where every field is one line, what each further line takes, and the least the tables beside it need. */
const TALLEST_mm = 176;
const LINE_mm = 2.8;
const LEAST_mm = 124;

/** Letters of ordinary width that a sign takes: capitals are wide, signs of the east of Asia twice as wide as ours. */
const widthOf = (sign: string): number => (sign >= '\u2e80' ? 1.8 : /\p{Lu}/u.test(sign) ? 1.5 : 1);

/** Lines a text takes at most, broken at its spaces and, where a word is too long, within it. */
export function linesOf(text: string, letters: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    let left = [...word].reduce((sum, sign) => sum + widthOf(sign), 0);
    if (used > 0 && used + 1 + left > letters) {
      lines++;
      used = 0;
    }
    while (left > letters) {
      lines++;
      left -= letters;
    }
    used += (used > 0 ? 1 : 0) + left;
  }
  return lines;
}

function furtherLines(sheet: RecordSheet, rows: readonly (readonly RecordField[])[], letters: number): number {
  return rows.reduce(
    (sum, row) => sum + Math.max(...row.map((field) => linesOf(sheet.written[field] ?? '', letters))) - 1,
    0,
  );
}

/** Height of the drawing, and whether the written words must be smaller to leave that much. */
export function paperRoom(sheet: RecordSheet): { drawing_mm: number; crowded: boolean } {
  const more = furtherLines(sheet, HEAD_FIELDS, HEAD_LETTERS) + furtherLines(sheet, FOOT_FIELDS, FOOT_LETTERS);
  const left_mm = TALLEST_mm - LINE_mm * more;
  return { drawing_mm: Math.max(LEAST_mm, left_mm), crowded: left_mm < LEAST_mm };
}
