// What the fields come to, in words, part by part: the figures of planFigures as a driller would say them.
import { CASINGS, WELL_PUMPS, type OwnLayer, type PlanFigures, type Run, type WellPlan } from '$sim';
import { t } from '../words';

export const PARTS = ['pipe', 'screen', 'slots', 'pack', 'seal'] as const;
export type Part = (typeof PARTS)[number];

/** Which part a field of the plan belongs to. */
export const PART_OF: Readonly<Record<keyof WellPlan, Part>> = {
  casing: 'pipe',
  stickUp_m: 'pipe',
  sump_m: 'pipe',
  cap: 'pipe',
  centralisers: 'pipe',
  screenFrom_m: 'screen',
  screenTo_m: 'screen',
  slotWidth_mm: 'slots',
  slotRows: 'slots',
  slotArc_mm: 'slots',
  slotSpacing_mm: 'slots',
  cloth: 'slots',
  pack: 'pack',
  packTop_m: 'pack',
  seal: 'seal',
  sealFrom_m: 'seal',
  sealTo_m: 'seal',
};

/** How much of each kind of the own log lies at the screen, and how much of it nobody logged, m. */
export function loggedAtScreen(plan: WellPlan, log: readonly OwnLayer[]): { kind: string; length_m: number }[] {
  const found = new Map<string, number>();
  let open_m = plan.screenTo_m - plan.screenFrom_m;
  for (const layer of log) {
    const part_m = Math.min(layer.to_m, plan.screenTo_m) - Math.max(layer.from_m, plan.screenFrom_m);
    if (part_m <= 0) continue;
    found.set(layer.kind, (found.get(layer.kind) ?? 0) + part_m);
    open_m -= part_m;
  }
  const list = [...found].map(([kind, length_m]) => ({ kind, length_m }));
  return open_m > 0.005 ? [...list, { kind: 'notLogged', length_m: open_m }] : list;
}

function pipeSums(plan: WellPlan, { pipe, amounts }: PlanFigures): string[] {
  const { outside_m, wall_m } = CASINGS[plan.casing];
  const sums = [
    t('board.sum.pieces', { n: amounts.pieces, joints: amounts.joints, length_m: pipe.length_m }),
    t('board.sum.bore', { bore_mm: (outside_m - 2 * wall_m) * 1000, weight_kg: pipe.weight_kg }),
  ];
  if (plan.cap && pipe.lift_kg > 0) sums.push(t('board.sum.floats', { lift_kg: pipe.lift_kg, fill_L: pipe.fill_L }));
  if (Number.isFinite(pipe.collapse_ratio)) sums.push(t('board.sum.collapse', { ratio: pipe.collapse_ratio }));
  sums.push(t('board.sum.working', { ratio: pipe.working_ratio }));
  return sums;
}

function screenSums(plan: WellPlan, { screen }: PlanFigures, run: Run, dry_m: number | null): string[] {
  const sums = [t('board.sum.length', { length_m: screen.length_m })];
  for (const { kind, length_m } of loggedAtScreen(plan, run.state.ownLog))
    sums.push(
      kind === 'notLogged'
        ? t('board.sum.notLogged', { length_m })
        : t('board.sum.logged', { length_m, kind: `work.kind.${kind}` }),
    );
  if (dry_m !== null) {
    const below_m = plan.screenFrom_m - dry_m;
    sums.push(t(below_m < 0 ? 'board.sum.aboveDry' : 'board.sum.belowDry', { length_m: Math.abs(below_m) }));
  }
  return sums;
}

function slotSums({ screen, amounts }: PlanFigures): string[] {
  if (screen.openArea_m2 <= 0) return [t('board.sum.noSlots')];
  const sums = [
    t('board.sum.slots', { n: amounts.slots, open: screen.openShare_frac }),
    t('board.sum.section', { section: screen.sectionLeft_frac }),
    t('board.sum.entrance', {
      flow_Lmin: WELL_PUMPS.suction.flow_m3s * 60000,
      entrance_mms: screen.entrance_ms * 1000,
      half_mms: screen.entranceHalf_ms * 1000,
    }),
  ];
  if (amounts.cloth_m > 0) sums.push(t('board.sum.cloth', { length_m: amounts.cloth_m }));
  if (screen.passing_frac === null) sums.push(t('board.sum.sandUnknown'));
  else
    sums.push(
      t('board.sum.sand', { passing: screen.passing_frac }),
      t(screen.loose_frac! > 0 ? 'board.sum.sandLoose' : 'board.sum.sandStops'),
    );
  return sums;
}

function packSums(plan: WellPlan, { amounts, gap_m, screen }: PlanFigures): string[] {
  const gap = t('board.sum.gap', { gap_mm: gap_m * 1000 });
  if (plan.pack === 'none') return [gap];
  const sums = [gap, t('board.sum.pack', { bought_L: amounts.packBought_m3 * 1000, pack_kg: amounts.pack_kg })];
  if (screen.packFit)
    sums.push(t('board.sum.packFit', { d30_mm: screen.packFit.d30_mm, wanted_mm: screen.packFit.wanted_mm }));
  return sums;
}

function sealSums(plan: WellPlan, { amounts }: PlanFigures): string[] {
  const fill = t('board.sum.backfill', { volume_L: amounts.backfill_m3 * 1000 });
  if (plan.seal === 'none') return [fill];
  const { seal_m3, seal_kg, sealWater_L } = amounts;
  return [
    t('board.sum.seal', { length_m: plan.sealTo_m - plan.sealFrom_m, volume_L: seal_m3 * 1000, mass_kg: seal_kg }),
    ...(sealWater_L > 0 ? [t('board.sum.sealWater', { water_L: sealWater_L })] : []),
    fill,
  ];
}

/** All sums of a part; none while the plan cannot be. */
export function sumsOf(
  part: Part,
  plan: WellPlan,
  figures: PlanFigures | null,
  run: Run,
  dry_m: number | null,
): string[] {
  if (!figures) return [];
  if (part === 'pipe') return pipeSums(plan, figures);
  if (part === 'screen') return screenSums(plan, figures, run, dry_m);
  if (part === 'slots') return slotSums(figures);
  if (part === 'pack') return packSums(plan, figures);
  return sealSums(plan, figures);
}
