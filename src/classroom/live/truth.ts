// The truth of a run in figures, for the instructor's eyes.
import type { Run } from '$sim';
import type { CutawayView, ShownWell } from '../../cutaway/shown';
import type { KeyedMessage } from '../../words';

const NO_FAULT = 'live.fact.whole';

/** What is out of order now, whether anybody can see it or not. */
function broken({ state }: Run): KeyedMessage[] {
  const { faults, machine, tick, stem } = state;
  const told: (KeyedMessage | false)[] = [
    faults.engineDead && { key: 'live.fact.engineDead' },
    faults.hoseLost_frac > 0 && { key: 'live.fact.hoseTorn', data: { share_frac: faults.hoseLost_frac } },
    faults.rain_mmh > 0 && { key: 'live.fact.rain', data: { left_s: Math.max(0, faults.rainEnd_tick - tick) } },
    faults.tool && { key: 'live.fact.tool' },
    faults.powder_frac < 1 && { key: 'live.fact.powder', data: { share_frac: faults.powder_frac } },
    faults.helperBack_tick > 0 && { key: 'live.fact.away', data: { left_s: faults.helperBack_tick - tick } },
    faults.left > 0 && { key: 'live.fact.toCome', data: { n: faults.left } },
    machine.stem === 'stuck' && { key: 'live.fact.stuck' },
    stem.driveTripped && { key: 'live.fact.driveTripped' },
  ];
  const all = told.filter((one) => one !== false);
  return all.length > 0 ? all : [{ key: NO_FAULT }];
}

function ofWell({ casing, rest_m, drawn_m3s }: ShownWell): KeyedMessage[] {
  if (!casing) return [];
  const water = casing.level_m === null ? [] : [{ key: 'live.fact.well', data: { level_m: casing.level_m } }];
  const rest = rest_m === null ? [] : [{ key: 'live.fact.rest', data: { rest_m } }];
  return [
    { key: 'live.fact.shoe', data: { shoe_m: casing.shoe_m } },
    ...water,
    ...rest,
    ...(drawn_m3s > 0 ? [{ key: 'live.fact.drawn', data: { drawn_Lmin: drawn_m3s * 60000 } }] : []),
  ];
}

function ofHole(run: Run, { hole, stem, pump, returns, pit }: CutawayView): KeyedMessage[] {
  const { trace } = run.record;
  const stands = trace.length > 0 ? trace.columns.stability_ratio[trace.length - 1]! : null;
  const { wall } = run.state;
  let fallen_m3 = 0;
  for (const taken_m3 of wall.taken_m3) fallen_m3 += taken_m3;
  return [
    { key: 'live.fact.depth', data: { depth_m: hole?.depth_m ?? stem.bottom_m, bit_m: stem.bit_m } },
    ...(hole
      ? [
          { key: 'live.fact.level', data: { level_m: hole.level_m } },
          { key: 'live.fact.bed', data: { bed_cm: hole.bed_m * 100 } },
        ]
      : []),
    { key: 'live.fact.flow', data: { flow_Lmin: pump.flow_m3s * 60000, share_frac: returns.share_frac } },
    { key: 'live.fact.pit', data: { settling_cm: pit.settling.level_m * 100, suction_cm: pit.suction.level_m * 100 } },
    { key: 'live.fact.fluid', data: { soaked_gL: pit.polymer_gL } },
    ...(stands === null ? [] : [{ key: stands < 1 ? 'live.fact.wallWeak' : 'live.fact.wallStands', data: { stands } }]),
    { key: 'live.fact.fallen', data: { fallen_L: fallen_m3 * 1000 } },
    { key: 'live.fact.lost', data: { lost_L: wall.lost_m3 * 1000, came_L: wall.came_m3 * 1000 } },
  ];
}

/** What an instructor wants to know besides the picture. `picture`: the view of the run with everything in it. */
export function truthOf(run: Run, picture: CutawayView): KeyedMessage[] {
  const { well } = picture;
  const closed = well?.casing?.look === 'set';
  return [...broken(run), ...(closed ? [] : ofHole(run, picture)), ...(well ? ofWell(well) : [])];
}
