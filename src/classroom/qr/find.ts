// Finds the QR codes in a picture: in each part of it that looks like one, else in the whole. The program that reads them expects one code, and little else.

import type { QRCode } from 'jsqr';
import { cleaned, doubled, greyOf, pictureOf, type Box, type Grey, type Picture } from './clean';
import { patchesIn } from './patches';

/** jsqr, or what stands for it. */
export type Scan = (
  data: Uint8ClampedArray,
  width: number,
  height: number,
  options: { inversionAttempts: 'dontInvert' },
) => QRCode | null;

/** How far apart the parts of one code may lie, in cells of patches.ts: little first, for codes beside each other. */
const REACHES = [0, 1, 2, 4];
/** White around a part that is looked at alone, dots. */
const RIM = 24;
/** A part that is no larger is looked at twice as large too, dots. */
const FINE = 900;

function textIn({ data, width, height }: Picture, scan: Scan): string | null {
  const text = scan(data, width, height, { inversionAttempts: 'dontInvert' })?.data;
  return text === undefined || text === '' ? null : text;
}

/** What a part of the picture says: as it is, larger, black and white. */
function textOfPatch(grey: Grey, clean: Grey, patch: Box, scan: Scan): string | null {
  const part = pictureOf(grey, patch, RIM);
  const fine = Math.max(part.width, part.height) <= FINE;
  return (
    textIn(part, scan) ?? (fine ? textIn(doubled(part), scan) : null) ?? textIn(pictureOf(clean, patch, RIM), scan)
  );
}

/** The texts of the codes found, each once. */
export function findCodes(picture: Picture, scan: Scan): string[] {
  const found = new Set<string>();
  const seen = new Set<string>();
  const grey = greyOf(picture);
  const clean = cleaned(grey);
  for (const reach of REACHES) {
    for (const patch of patchesIn(clean, reach)) {
      const name = Object.values(patch).join();
      if (seen.has(name)) continue;
      seen.add(name);
      const text = textOfPatch(grey, clean, patch, scan);
      if (text === null) continue;
      found.add(text);
      // Read: it need not be looked at again.
      for (let y = patch.top; y < patch.bottom; y++)
        clean.dots.fill(255, y * clean.width + patch.left, y * clean.width + patch.right);
    }
  }
  const asItIs = found.size === 0 ? textIn(picture, scan) : null;
  return asItIs === null ? [...found] : [asItIs];
}
