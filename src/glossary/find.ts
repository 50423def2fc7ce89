// Finds the words of the trade in a text: each at its first place only, the longer form before the shorter.
import { say } from '../words';
import { TERM_NAMES, type TermName } from './terms';

export interface Piece {
  readonly text: string;
  readonly term: TermName | null;
}

interface Finder {
  readonly every: RegExp;
  readonly termOf: ReadonlyMap<string, TermName>;
}

let kept: Finder | null = null;

function finder(): Finder {
  if (kept) return kept;
  const termOf = new Map<string, TermName>();
  for (const name of TERM_NAMES)
    for (const form of say(`term.${name}.as`).split('|')) termOf.set(form.toLowerCase(), name);
  const forms = [...termOf.keys()].sort((a, b) => b.length - a.length);
  kept = { every: new RegExp(`(?<![\\p{L}-])(?:${forms.join('|')})(?![\\p{L}-])`, 'giu'), termOf };
  return kept;
}

/** The text cut into pieces; joined again they are the text. */
export function piecesOf(text: string): Piece[] {
  const { every, termOf } = finder();
  const pieces: Piece[] = [];
  const found = new Set<TermName>();
  let end = 0;
  for (const match of text.matchAll(every)) {
    const term = termOf.get(match[0].toLowerCase())!;
    if (found.has(term)) continue;
    found.add(term);
    if (match.index > end) pieces.push({ text: text.slice(end, match.index), term: null });
    pieces.push({ text: match[0], term });
    end = match.index + match[0].length;
  }
  if (end < text.length) pieces.push({ text: text.slice(end), term: null });
  return pieces;
}
