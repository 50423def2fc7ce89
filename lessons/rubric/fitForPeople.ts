// Items of making a well fit for people: polymer broken, test run and read, chlorine gone.

import { acceptedActs, eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** Chlorine against the drilling polymer: 500 to 1000 mg/L, for hours (row Y-10); the best go counts. Bands: full_mgL, none_mgL, full_s, none_s. */
export function polymerBreak(view: RunView, bands: Bands): Judged {
  const goes = acceptedActs(view, 'breakPolymer');
  let best = { share_frac: -1, dose_mgL: 0, contact_h: 0, tick: 0 };
  for (const [tick, , payload] of goes) {
    const { dose_mgL = 0, contact_s = 0 } = payload as { dose_mgL?: number; contact_s?: number };
    const byDose = shareBetween(dose_mgL, bandOf(bands, 'full_mgL'), bandOf(bands, 'none_mgL'));
    const byTime = shareBetween(contact_s, bandOf(bands, 'full_s'), bandOf(bands, 'none_s'));
    const share_frac = Math.min(byDose, byTime);
    if (share_frac > best.share_frac) best = { share_frac, dose_mgL, contact_h: shown(contact_s / 3600, 1), tick };
  }
  if (goes.length === 0) return { share_frac: 0, reason: { key: 'reason.polymerBreak.none', data: {} }, evidence: [] };
  const { share_frac, dose_mgL, contact_h, tick } = best;
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.polymerBreak.full' : 'reason.polymerBreak.lost',
      data: { dose_mgL, contact_h },
    },
    evidence: [{ tick, value: dose_mgL, unit: 'mg/L' }],
  };
}

/** A steady test to its end (row Y-19: 2 to 6 h for a hand pump), and recovery watched: seven tenths and three. Bands: test_s, recovery_s. */
export function testRun(view: RunView, bands: Bands): Judged {
  const tests = acceptedActs(view, 'yieldTest');
  const ends = eventsNamed(view, 'testDone');
  if (tests.length === 0) return { share_frac: 0, reason: { key: 'reason.testRun.none', data: {} }, evidence: [] };
  let share_frac = 0;
  let best_h = 0;
  let broken = true;
  for (const [tick, , payload] of tests) {
    const { step_s = 0, recovery_s = 0 } = payload as { step_s?: number; recovery_s?: number };
    const steps = ['rate1_Lmin', 'rate2_Lmin', 'rate3_Lmin'].filter((name) => name in payload).length;
    const end = ends.find((event) => event.tick >= tick);
    if (!end || end.data.refusal !== '') continue;
    broken = false;
    const byTest = shareBetween(step_s * steps, bandOf(bands, 'test_s'), 0);
    const byRecovery = shareBetween(recovery_s, bandOf(bands, 'recovery_s'), 0);
    share_frac = Math.max(share_frac, 0.7 * byTest + 0.3 * byRecovery);
    best_h = Math.max(best_h, shown((step_s * steps) / 3600, 1));
  }
  const data = { test_h: best_h, goal_h: shown(bandOf(bands, 'test_s') / 3600, 1) };
  return {
    share_frac,
    reason: broken
      ? { key: 'reason.testRun.broken', data: {} }
      : { key: share_frac > 1 - 1e-9 ? 'reason.testRun.full' : 'reason.testRun.lost', data },
    evidence: tests.map(([tick]) => ({ tick })),
  };
}

/** Chlorine left at the hand-over, at most .5 mg/L (row C-02); without any put in for disinfection nothing is shown. Bands: full_mgL, none_mgL. */
export function chlorineGone(view: RunView, bands: Bands): Judged {
  const left = view.well?.verdict?.disinfection ?? null;
  if (left === null || !left.done)
    return { share_frac: 0, reason: { key: 'reason.chlorineGone.none', data: {} }, evidence: [] };
  const share_frac = shareBetween(left.left_mgL, bandOf(bands, 'full_mgL'), bandOf(bands, 'none_mgL'));
  const data = { left_mgL: shown(left.left_mgL, 1), limit_mgL: bandOf(bands, 'full_mgL') };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.chlorineGone.full' : 'reason.chlorineGone.lost', data },
    evidence: [{ value: data.left_mgL, unit: 'mg/L' }],
  };
}
