// The parts of the editor, in the order in which an exercise is thought out, and which part a field belongs to.

export const PARTS = ['words', 'ground', 'site', 'kit', 'faults', 'seen', 'points', 'pool'] as const;
export type PartId = (typeof PARTS)[number];

const PART_OF: Readonly<Record<string, PartId>> = {
  title: 'words',
  briefing: 'words',
  ground: 'ground',
  season: 'ground',
  site: 'site',
  stocks: 'kit',
  budget_marks: 'kit',
  depth_m: 'kit',
  cap_s: 'kit',
  faults: 'faults',
  live: 'faults',
  view: 'seen',
  senses: 'seen',
  gauges: 'seen',
  hints: 'seen',
  coached: 'seen',
  weights: 'points',
  bands: 'points',
  pass_points: 'points',
  pool: 'pool',
};

/** Whether the field of a path is changed in one of the parts. */
export const hasPart = (path: string): boolean => Object.hasOwn(PART_OF, path.split('.')[0]!);

/** The part in which the field of a path is changed; what none of them holds is told with the words. */
export const partOf = (path: string): PartId => PART_OF[path.split('.')[0]!] ?? 'words';
