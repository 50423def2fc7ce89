// How the work screen is laid out, chosen by the room there is, measured in letters so that large text counts as little room.

export type Form = 'roomy' | 'beside' | 'stacked';

/** Roomy: all groups of hands are seen at once. Beside: cutaway and hands side by side, hands by tabs. Stacked: one above the other. */
export function formFor(width_px: number, height_px: number, letter_px: number): Form {
  const width_rem = width_px / letter_px;
  const height_rem = height_px / letter_px;
  if (width_rem >= 64 && height_rem >= 40) return 'roomy';
  return width_px > height_px * 1.1 && width_rem >= 36 ? 'beside' : 'stacked';
}
