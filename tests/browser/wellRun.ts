// Runs of the lesson with a whole well, played up to a stage of the work: a careful crew drills some metres, then the rods come
// out and the well is made as a learner would by the hands. Kept as the text of a run file, to be opened in the app.
import { createCrew, jobOf, lessonById, scenarioOf, writeRunFile, type Lesson } from '../../lessons';
import { act, createRun, sensesOf, step, type ActionName, type Payload, type Run } from '../../sim';

export const STAGES = [
  'drilled',
  'stopped',
  'pulled',
  'landed',
  'packed',
  'sealed',
  'washed',
  'tested',
  'built',
] as const;
export type Stage = (typeof STAGES)[number];

/** Deep enough for a screen below the water of the lesson's ground, and no deeper: the app plays the run again when it opens it. */
const DEPTH_m = 7;
const LONGEST_s = 400_000;

export const wellLesson = (): Lesson => lessonById('open-well')!;

function go(run: Run, seconds: number): void {
  for (let i = 0; i < seconds; i++) step(run);
}

/** Does an act and lets its time pass; an act that is refused is a fault of the test. */
export function deed(run: Run, action: ActionName, payload: Payload = {}): void {
  const result = act(run, action, payload);
  if (result.kind !== 'done') throw new Error(`${action}: ${JSON.stringify(result)} at ${run.state.tick} s`);
  for (let i = 0; i < LONGEST_s && run.state.tasks.length > 0; i++) step(run);
  // What moves by itself afterwards (casing on its way down, fill that sinks) comes to rest.
  for (let i = 0; i < 3600 && run.state.completion.casing.motion_m !== 0; i++) step(run);
}

/** The next morning, where it has grown dark. */
export function untilLight(run: Run, need_s: number): void {
  const light = (): number => sensesOf(run).light_s ?? Infinity;
  while (light() < need_s) go(run, 60);
}

function drilled(lesson: Lesson, seed: number): Run {
  const run = createRun(scenarioOf(lesson, seed));
  const crew = createCrew('careful', { ...jobOf(lesson), depth_m: DEPTH_m });
  while (run.state.tick < LONGEST_s) {
    const next = crew.decide(sensesOf(run));
    if (next?.action === 'stopDrilling' || next?.action === 'pullOut') return run;
    if (next) act(run, next.action, next.payload);
    step(run);
  }
  throw new Error('the crew never stopped drilling');
}

const PLAN = {
  casing: 'pvc63',
  sump_m: 0.5,
  slotWidth_mm: 0.5,
  slotRows: 2,
  slotArc_mm: 60,
  slotSpacing_mm: 20,
  cloth: 'fine',
  cap: true,
  centralisers: 3,
  pack: 'pack07',
  seal: 'bentoniteGranules',
  sealFrom_m: 0.3,
  sealTo_m: 3.2,
  stickUp_m: 0.5,
} as const;

const TO: Readonly<Record<Exclude<Stage, 'drilled'>, (run: Run) => void>> = {
  stopped: (run) => {
    const shoe_m = Math.floor((run.state.hole.depth_m - 0.3) * 10) / 10;
    const screenTo_m = shoe_m - PLAN.sump_m;
    const screen = { screenFrom_m: screenTo_m - 2, screenTo_m, packTop_m: screenTo_m - 3 };
    deed(run, 'planWell', { ...PLAN, ...screen });
    // The screen is sawn and all pieces are joined while fluid still goes round: the open hole waits for nothing.
    deed(run, 'setThrottle', { throttle_frac: 0.75 });
    while (run.state.completion.casing.joined < sensesOf(run).well!.casing.pieces) deed(run, 'joinCasing');
    deed(run, 'setThrottle', { throttle_frac: 0 });
    go(run, 30);
    deed(run, 'stopDrilling');
  },
  pulled: (run) => {
    deed(run, 'pullOut', { speed_ms: 0.05, topUp: true });
  },
  landed: (run) => {
    deed(run, 'runCasing', { fill: true, speed_ms: 0.1 });
  },
  packed: (run) => {
    deed(run, 'pourPack', { pack: 'pack07', volume_L: 18, rate_Lmin: 0.5 });
    go(run, 600);
    deed(run, 'sound');
  },
  sealed: (run) => {
    deed(run, 'placeSeal', { seal: 'bentoniteGranules', volume_L: 12, rate_Lmin: 0.5 });
    go(run, 600);
    deed(run, 'sound');
  },
  washed: (run) => {
    untilLight(run, 14400);
    deed(run, 'breakPolymer', { dose_mgL: 500, contact_s: 3600 });
    deed(run, 'develop', { method: 'surge', time_s: 3600, strokes_min: 10 });
    deed(run, 'develop', { method: 'bail', time_s: 1800 });
  },
  tested: (run) => {
    untilLight(run, 14400);
    deed(run, 'dipWell');
    deed(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 10, rate2_Lmin: 15, step_s: 1800, recovery_s: 1800 });
  },
  built: (run) => {
    untilLight(run, 20000);
    deed(run, 'disinfect', { dose_mgL: 50, contact_s: 3600 });
    untilLight(run, 20000);
    deed(run, 'headWorks', { apron_m: 1, drain_m: 3, cap: true, lift: 'suction' });
  },
};

/** The run at a stage, on the ground of a seed. */
export function wellRunAt(stage: Stage, seed = 7): Run {
  const run = drilled(wellLesson(), seed);
  for (const one of STAGES.slice(1, STAGES.indexOf(stage) + 1) as Exclude<Stage, 'drilled'>[]) TO[one](run);
  return run;
}

const texts = new Map<Stage, string>();

export function wellRunFile(stage: Stage): string {
  const kept = texts.get(stage) ?? writeRunFile(wellRunAt(stage), wellLesson(), { who: 'fish', name: `Well ${stage}` });
  texts.set(stage, kept);
  return kept;
}
