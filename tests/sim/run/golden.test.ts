// Golden hashes: they and SIM_VERSION change together, in one commit, with a reason.
import { expect, it } from 'vitest';
import { hashRun, SIM_VERSION, type SettingId } from '../../../sim';
import { lessonById, playCrew, practiceFor, type Lesson } from '../../../lessons';
import golden from './golden.json';

interface Golden {
  readonly crew: string;
  readonly seed: number;
  /** Of this lesson; or a whole hole of this depth in this setting; without either, the lesson first-rods. */
  readonly lesson?: string;
  readonly depth_m?: number;
  readonly setting?: string;
  readonly hash: string;
}

const lessonOf = ({ lesson, depth_m, setting }: Golden): Lesson =>
  depth_m === undefined
    ? lessonById(lesson ?? 'first-rods')!
    : practiceFor('open-hole', { depth_m, setting: setting as SettingId })!;

it('the hashes of played runs are those written down for this version', () => {
  const runs: readonly Golden[] = golden.runs;
  const hashes = runs.map((run) => hashRun(playCrew(lessonOf(run), run.crew, run.seed)));
  expect({ sim: SIM_VERSION, hashes }).toEqual({ sim: golden.sim, hashes: runs.map((run) => run.hash) });
}, 180_000);
