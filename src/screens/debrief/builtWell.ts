// The well as it really stands, for the reveal: pipe, fills and voids of the annulus, water at rest. For the debrief only.
import { FILL_NAMES, type Run, type Verdict } from '$sim';
import { bandsOf, voidsOf } from '../../cutaway/wellShape';
import { createShownWell, fillWell } from '../../cutaway/viewWell';
import type { BuiltFill, BuiltWell } from '../../charts/built';
import { hatchOf } from '../../charts/hatches';
import { materialKey } from '../../record/wellWords';

/** null where no casing stands in the hole. */
export function builtWell(run: Run, verdict: Verdict | null): BuiltWell | null {
  const shown = createShownWell(run);
  if (!shown) return null;
  fillWell(shown, run, 'debrief');
  const { casing, annulus } = shown;
  if (!casing || casing.shoe_m <= 0) return null;
  const bands = annulus ? bandsOf(annulus) : [];
  const fills: BuiltFill[] = bands.map(({ fill, from_m, to_m }) => {
    const name = FILL_NAMES[fill]!;
    return { from_m, to_m, hatch: hatchOf(name), word: name === 'ground' ? 'built.ground' : materialKey(name) };
  });
  const voids: BuiltFill[] = annulus
    ? voidsOf(annulus, bands).map(([from_m, to_m]) => ({ from_m, to_m, hatch: null, word: 'built.void' }))
    : [];
  const bottom_m = run.state.hole.depth_m;
  const within = (fill: BuiltFill): BuiltFill => ({ ...fill, to_m: Math.min(fill.to_m, bottom_m) });
  return {
    bottom_m,
    top_m: casing.top_m,
    shoe_m: casing.shoe_m,
    pipe_frac: casing.outside_m / run.kit.bit_m,
    cap: casing.cap,
    snapped: casing.snapped_m !== null,
    screen: casing.screen,
    fills: [...fills, ...voids]
      .filter(({ from_m }) => from_m < bottom_m)
      .map(within)
      .sort((a, b) => a.from_m - b.from_m),
    rest_m: verdict?.static_m ?? null,
    dry_m: verdict?.dryStatic_m ?? null,
  };
}
