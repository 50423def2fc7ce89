// What each part of an exercise is set to, in a few words on its fold.
import { baseOf, type Exercise } from '$lessons';
import { t } from '../../words';
import type { PartId } from './parts';
import { ALL, sumOf } from './points';
import { figureOf, shownAs, told } from './figures';

const joined = (parts: readonly (string | false)[]): string => parts.filter((part) => part !== false).join(' ');

function groundSum({ ground, season }: Exercise): string {
  const by =
    ground.by === 'lesson'
      ? t('editor.sum.ground.lesson')
      : ground.by === 'setting'
        ? t('editor.sum.ground.setting', { setting: `setting.${ground.setting}` })
        : t('editor.sum.ground.layers', { n: ground.layers.length, depth_m: told(ground.waterTable_m) });
  return joined([by, season === 'dry' && t('editor.sum.dry')]);
}

function kitSum(exercise: Exercise): string {
  const base = baseOf(exercise);
  const { unit } = figureOf(exercise, 'cap_s');
  const cap = shownAs(figureOf(exercise, 'cap_s'), exercise.cap_s);
  const changed = Object.keys(exercise.stocks).length;
  return joined([
    t('editor.sum.kit', {
      n: told(cap),
      unit: `editor.unit.${unit}`,
      depth_m: told(exercise.depth_m ?? base.end.depth_m),
    }),
    changed > 0 && t('editor.sum.stocks', { n: changed }),
    exercise.budget_marks !== undefined && t('editor.sum.budget', { marks: told(exercise.budget_marks) }),
  ]);
}

function poolSum({ pool, ground }: Exercise): string {
  if (pool) return t('editor.sum.pool', { n: pool.seeds.length, spread: pool.spread_points });
  return t(ground.by === 'layers' ? 'editor.sum.pool.same' : 'editor.sum.pool.none');
}

const SUMS: Readonly<Record<PartId, (exercise: Exercise) => string>> = {
  words: ({ briefing }) =>
    briefing.length > 0 ? t('editor.sum.words', { n: briefing.length }) : t('editor.sum.words.usual'),
  ground: groundSum,
  site: ({ site }) =>
    site
      ? t('editor.sum.site', { spots: site.spots.length, sources: site.sources.length, wells: site.wells.length })
      : t('editor.sum.site.drawn'),
  kit: kitSum,
  faults: ({ faults, live }) =>
    joined([
      faults.length > 0 ? t('editor.sum.faults', { n: faults.length }) : t('editor.sum.faults.none'),
      live && t('editor.sum.live'),
    ]),
  seen: ({ view, hints }) =>
    joined([t(`brief.view.${view}`), t('editor.sum.hints', { hints: `editor.hints.${hints}` })]),
  points: (exercise) => t('editor.sum.points', { sum: sumOf(exercise), all: ALL, pass: told(exercise.pass_points) }),
  pool: poolSum,
};

export const sumOfPart = (part: PartId, exercise: Exercise): string => SUMS[part](exercise);
