// What a text that came in holds: results as files or letters, one or many, and parts of results that wait for the others.
import { joinParts, partOf, readResult, type Joined, type ReadResult } from '$lessons';

export interface Found {
  /** The text that is kept, and what was read in it. */
  readonly text: string;
  readonly read: ReadResult;
}

/** Shorter words around a result are a message, not a result. */
const LEAST_LETTERS = 40;

export interface Sorted {
  readonly found: readonly Found[];
  /** Parts that wait for others, and of which results. */
  readonly parts: readonly string[];
  readonly open: Joined['open'];
}

/** A file is one result; a text may hold several, each without a blank in it. */
const wordsOf = (text: string): string[] => (text.trim().startsWith('{') ? [text] : text.trim().split(/\s+/));

/** `parts`: those that came before and wait. */
export function sorted(text: string, parts: readonly string[]): Sorted {
  const { whole, open, rest } = joinParts([...parts, ...wordsOf(text)]);
  const waits = new Set(open.map(({ id }) => id));
  const left = [...parts, ...wordsOf(text)].filter((word) => waits.has(partOf(word.trim())?.id ?? ''));
  const found = [...whole, ...rest].map((word) => ({ text: word, read: readResult(word) }));
  const results = found.filter(({ read }) => read.ok);
  // Nothing at all in it: said once, of the whole.
  if (results.length === 0 && left.length === parts.length && rest.length > 1)
    return { found: [{ text, read: readResult(text) }], parts: left, open };
  const worth = found.filter((one) => one.read.ok || found.length === 1 || one.text.length >= LEAST_LETTERS);
  return { found: worth, parts: [...new Set(left)], open };
}
