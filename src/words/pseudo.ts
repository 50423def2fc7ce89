// The pseudo-locale: English made longer and accented, so that clipped or hard-coded words show at once.

const ACCENTED: Record<string, string> = {
  a: 'áà', e: 'éè', i: 'íì', o: 'óò', u: 'úù', y: 'ý', c: 'ç', n: 'ñ', s: 'š', z: 'ž',
  A: 'Å', E: 'É', I: 'Î', O: 'Ø', U: 'Ü', C: 'Ç', N: 'Ñ', S: 'Š', Z: 'Ž',
}; // prettier-ignore

/** The text with every vowel doubled and accented; slots in braces are left as they are. */
export function pseudo(text: string): string {
  return text
    .split(/(\{[^{}]*\})/)
    .map((part) => (part.startsWith('{') ? part : [...part].map((letter) => ACCENTED[letter] ?? letter).join('')))
    .join('');
}

/** Brackets round a whole message show where one is cut off or glued together. */
export function bracketed(text: string): string {
  return `⟦${text}⟧`;
}
