// Where in the run an item of the rubric shows: the first few moments and depths, in words.
import type { Grade } from '../../app/playTypes';
import { t } from '../../words';

type Evidence = Grade['items'][number]['evidence'][number];

const SHOWN = 3;

export function placesOf(evidence: readonly Evidence[]): string[] {
  const places = [...new Set(evidence.map(placeOf).filter((place) => place !== null))];
  const rest = places.length - SHOWN;
  return rest > 0 ? [...places.slice(0, SHOWN), t('points.more', { n: rest })] : places;
}

function placeOf({ tick, depth_m }: Evidence): string | null {
  if (tick !== undefined && depth_m !== undefined) return t('points.atDepth', { time_s: tick, depth_m });
  if (tick !== undefined) return t('points.at', { time_s: tick });
  return depth_m === undefined ? null : t('points.depth', { depth_m });
}
