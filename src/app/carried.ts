// An exercise carried inside the page itself: the trainer saved as one file, with what the class is to do in it.

const ID = 'carried-exercise';
/** What a link would end in. Nothing in it can end a script element. */
const FRAGMENT = /^#\/exercise\/[A-Z0-9-]{1,12}\/[A-Za-z0-9_-]+$/;

/** The page's text with an exercise in it, in place of one that was there. `fragment`: as behind the # of a link. */
export function withCarried(page: string, fragment: string): string {
  if (!FRAGMENT.test(fragment)) throw new RangeError('This is no link to an exercise.');
  const bare = page.replace(new RegExp(`<script type="text/plain" id="${ID}">[^<]*</script>`), '');
  const end = bare.lastIndexOf('</body>');
  const at = end < 0 ? bare.length : end;
  return `${bare.slice(0, at)}<script type="text/plain" id="${ID}">${fragment}</script>${bare.slice(at)}`;
}

/** What the page carries, as behind the # of a link; null where it carries none. */
export function carriedIn(page: Document): string | null {
  const text = page.getElementById(ID)?.textContent.trim() ?? '';
  return FRAGMENT.test(text) ? text : null;
}
