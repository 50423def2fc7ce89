// A heading that comes into the page after a change of place, when what it heads had to be fetched first, takes the focus.
import { router } from '../../app/router.svelte';

/** Moves the focus to the heading unless it is the first screen, or the focus is already on something chosen. */
export function headed(heading: HTMLElement): void {
  const nowhere = document.activeElement === null || document.activeElement === document.body;
  if (router.changes > 0 && nowhere) heading.focus();
}
