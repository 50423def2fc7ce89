// Golden hashes: they and SIM_VERSION change together, in one commit, with a reason.
import { expect, it } from 'vitest';
import { hashRun, SIM_VERSION } from '../../../sim';
import { lessonById, playCrew } from '../../../lessons';
import golden from './golden.json';

it('the hashes of played runs are those written down for this version', () => {
  const hashes = golden.runs.map(({ crew, seed }) => hashRun(playCrew(lessonById('first-rods')!, crew, seed)));
  expect({ sim: SIM_VERSION, hashes }).toEqual({ sim: golden.sim, hashes: golden.runs.map((run) => run.hash) });
});
