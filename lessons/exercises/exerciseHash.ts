// The fingerprint of an exercise: two that differ in anything that a run or its score hangs on differ in it. Results name it.

import { hashOf } from '$sim';
import type { Exercise } from './exerciseSchema';

/** 16 hex digits. What only words say (title, briefing) and which grounds are given out changes no run and is left out. */
export function exerciseHash(exercise: Exercise): string {
  const { title: _title, briefing: _briefing, pool: _pool, sim: _sim, ...played } = exercise;
  return hashOf(played);
}
