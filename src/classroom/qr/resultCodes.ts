// The letters of a result as the texts of its QR codes: as few as keep well, else as few as there can be.

import { resultParts } from '$lessons';

/** Signs that a code of the largest version holds in its alphanumeric mode, at level M and at level L. */
export const SIGNS_M = 1451;
export const SIGNS_L = 1853;

/** One to four texts; null where the result is too long for them: then it goes as a file. */
export function resultCodes(letters: string): string[] | null {
  return resultParts(letters, SIGNS_M) ?? resultParts(letters, SIGNS_L);
}
