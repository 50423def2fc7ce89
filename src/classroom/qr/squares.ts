// A text as a QR code (ISO/IEC 18004): which squares are dark, and the code drawn as the path of an SVG picture.

import type QrCodeFactory from 'qrcode-generator';

/** Larger codes than this are too fine for the camera of a cheap phone. */
export const LARGEST_VERSION = 25;
/** Light rim that the standard asks for, squares. */
export const RIM = 4;

export interface Squares {
  /** 1 to 25. */
  readonly version: number;
  /** How much may be hidden or dirty: M a seventh of it, L half of that. */
  readonly level: 'M' | 'L';
  /** Squares on a side, the rim not counted. */
  readonly side: number;
  dark(row: number, column: number): boolean;
}

type Factory = typeof QrCodeFactory;
const DENSE = /^[0-9A-Z $%*+\-./:]*$/;
/** What is thrown where the text does not fit is a text itself. */
const OVERFLOW = /overflow/;

function made(factory: Factory, text: string, version: number, level: 'M' | 'L'): Squares | null {
  const code = factory(version as Parameters<Factory>[0], level);
  code.addData(text, DENSE.test(text) ? 'Alphanumeric' : 'Byte');
  try {
    code.make();
  } catch (problem) {
    if (OVERFLOW.test(String(problem))) return null;
    throw problem;
  }
  const side = code.getModuleCount();
  return { version: (side - 17) / 4, level, side, dark: (row, column) => code.isDark(row, column) };
}

/** The smallest code that holds the text, as well kept as the largest size allows; null where none does. The program that makes them is fetched the first time. */
export async function squaresOf(text: string): Promise<Squares | null> {
  const { default: factory } = await import('qrcode-generator');
  factory.stringToBytes = (given) => [...new TextEncoder().encode(given)];
  for (const level of ['M', 'L'] as const) {
    if (made(factory, text, LARGEST_VERSION, level) !== null) return made(factory, text, 0, level);
  }
  return null;
}

/** Rows of dark squares as one path, the rim counted: units are squares. */
export function pathOf({ side, dark }: Squares): string {
  const parts: string[] = [];
  for (let row = 0; row < side; row++) {
    for (let from = 0; from < side; from++) {
      if (!dark(row, from)) continue;
      let to = from + 1;
      while (to < side && dark(row, to)) to++;
      parts.push(`M${from + RIM} ${row + RIM}h${to - from}v1h-${to - from}z`);
      from = to;
    }
  }
  return parts.join('');
}
