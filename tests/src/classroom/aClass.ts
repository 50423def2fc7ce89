// A made-up class for what is written out of one: results of every verdict, signs of every sort, awkward texts.
import type { ClassReport, ResultLine } from '../../../src/classroom/exports/report';

const judged = [
  { id: 'clearedStops', category: 'hole', max: 30 },
  { id: 'labelsTrue', category: 'log', max: 30 },
  { id: 'jobTime', category: 'economy', max: 40 },
] as const;

const PLAYED: ResultLine = {
  who: 'T-07',
  classCode: 'B7',
  attempt: 1,
  practice: false,
  counts: true,
  repeats: false,
  sameRun: false,
  verdict: 'reproduced',
  why: '',
  ground: 4294967295,
  ownGround: true,
  finished: true,
  score: 80.1,
  passed: true,
  outcome: 'outcome.reached',
  categories: [
    { id: 'hole', points: 30, max: 30 },
    { id: 'log', points: 20.1, max: 30 },
    { id: 'economy', points: 30, max: 40 },
  ],
  items: [
    { id: 'clearedStops', points: 30, max: 30 },
    { id: 'labelsTrue', points: 20.1, max: 30 },
    { id: 'jobTime', points: 30, max: 40 },
  ],
  job_s: 5040,
  spent_s: 611.25,
  taken_ms: Date.UTC(2026, 2, 3, 9, 30),
  from: 'result-T-07.json',
};

const notPlayed = { finished: null, score: null, passed: null, outcome: null, categories: [], items: [], job_s: null };

export const CLASS: ClassReport = {
  exercise: {
    id: 'exercise-abcd',
    edition: 3,
    hash: '0123456789abcdef',
    title: '=Brunnen „Süd“, erster, "leichter" Tag',
    lesson: 'first-rods',
    pass_points: 70,
    judged,
  },
  sim: '1.2.3',
  results: [
    PLAYED,
    { ...PLAYED, who: 'fish', attempt: 2, score: 41, passed: false, outcome: 'outcome.stoppedShort', spent_s: null },
    {
      ...PLAYED,
      who: 'T-08',
      finished: false,
      score: 12,
      passed: false,
      outcome: 'outcome.running',
      classCode: null,
      attempt: null,
      ownGround: null,
    },
    { ...PLAYED, who: 'Amina of the ferry', sameRun: true },
    { ...PLAYED, counts: false, repeats: true, from: '' },
    {
      ...PLAYED,
      ...notPlayed,
      who: 'T-09',
      verdict: 'notReproduced',
      why: 'Played again, it ends otherwise.',
      from: '-1+cmd, "a"\r\nb',
    },
    { ...PLAYED, ...notPlayed, who: 'T-10', verdict: 'otherVersion', why: '+another version', from: '\t@x' },
  ],
};

/** A whole class: so many learners with up to three attempts each. */
export function bigClass(learners: number): ClassReport {
  const results = Array.from({ length: learners }, (_, i): ResultLine[] =>
    Array.from({ length: 1 + (i % 3) }, (_, k) => ({
      ...PLAYED,
      who: `T-${String(i + 1).padStart(2, '0')}`,
      attempt: k + 1,
      counts: k === i % 3,
      finished: i % 7 !== 6,
      passed: i % 2 === 0,
      score: (i * 17 + k * 5) % 101,
      spent_s: i % 5 === 0 ? null : 60 * i + k + 0.5,
    })),
  ).flat();
  return { ...CLASS, results };
}
