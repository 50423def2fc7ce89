// A key goes down on a press of a hand: a tap at once, a hold if it stays down.
import type { Press } from './hand';
import type { Hold } from './hold.svelte';

/** What is to be done when the key comes up again; nothing where the press cannot be held. */
export function keyPress(press: Press, asks: boolean, hold: Hold): (() => void) | undefined {
  const what = press.hold;
  if (!what) {
    press.press();
    return undefined;
  }
  if (hold.took(what)) return () => undefined;
  if (press.whyNot) press.press();
  else {
    // A question opens only when the key comes up: held down it is an answer already.
    if (!asks) press.press();
    const end = hold.press(what);
    return () => {
      if (!end() && asks) press.press();
    };
  }
  // The key's own repeats are no presses.
  return () => undefined;
}
