// A heading that comes into the page after a change of place, when what it heads had to be fetched first, takes the focus.
import { router } from '../../app/router.svelte';

/** Moves the focus to the heading unless it is the first screen, or something was chosen while one waited. */
export function headed(heading: HTMLElement): void {
  const { activeElement, body } = document;
  const nothingChosen = activeElement === null || activeElement === body || activeElement === router.focusedBefore;
  if (router.changes > 0 && nothingChosen) heading.focus();
}
