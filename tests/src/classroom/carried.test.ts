// An exercise inside the saved page: one at a time, found again, and nothing but an exercise.
import { expect, test } from 'vitest';
import { carriedIn, withCarried } from '../../../src/app/carried';

/** As much of a page as is asked for. */
const pageOf = (html: string): Document => {
  const found = /<script type="text\/plain" id="carried-exercise">([^<]*)<\/script>/.exec(html);
  return { getElementById: () => (found ? { textContent: found[1] } : null) } as unknown as Document;
};

test('a page carries the exercise that was put in last', () => {
  const page = '<html><body><div id="app"></div></body></html>';
  const once = withCarried(page, '#/exercise/B7/abc_-1');
  expect(carriedIn(pageOf(once))).toBe('#/exercise/B7/abc_-1');
  expect(once.endsWith('</script></body></html>')).toBe(true);
  const twice = withCarried(once, '#/exercise/-/xyz');
  expect(carriedIn(pageOf(twice))).toBe('#/exercise/-/xyz');
  expect(twice.match(/carried-exercise/g)).toHaveLength(1);
  expect(carriedIn(pageOf(page))).toBeNull();
});

test('nothing else gets into the page', () => {
  expect(() => withCarried('<body></body>', '#/exercise/B7/</script><script>')).toThrow(RangeError);
  expect(carriedIn(pageOf('<script type="text/plain" id="carried-exercise">javascript:1</script>'))).toBeNull();
});
