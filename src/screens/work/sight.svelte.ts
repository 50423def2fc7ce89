// How the drawing is looked at: the lens, and how wide the hole is drawn. The width is kept by the device.
import { announcer } from '../../app/announcer.svelte';
import { device } from '../../app/device.svelte';
import type { LensPower } from '../../cutaway';
import { say } from '../../words';

/** One press changes the width by about an eighth of it, never by less than one. */
const SHARE = 8;

export class Sight {
  lens: LensPower = $state(0);
  /** What fits the page now: the width drawn, the least and the most. */
  width = $state.raw({ now: 1, least: 1, most: 1 });

  widen(direction: 1 | -1): void {
    const { now, least, most } = this.width;
    const step = Math.max(1, Math.round(now / SHARE));
    const wanted = Math.min(most, Math.max(least, now + direction * step));
    if (wanted === now) return;
    device.change({ widening: wanted });
    announcer.say(say('work.cutaway.widthNow', { n: wanted }));
  }

  hold(power: LensPower): void {
    this.lens = power;
  }

  toggleLens(): void {
    this.hold(this.lens === 0 ? 1 : 0);
  }

  toggleWall(): void {
    this.hold(this.lens === 2 ? 1 : 2);
  }
}
