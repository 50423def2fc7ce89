// The class as statements of xAPI 1.0.3, for a store of learning records. Nobody's name is in them: a learner is the sign, within the class.
import { isPicture } from '../../app/pictures';
import { isoDuration } from './duration';
import { nameUuid } from './nameUuid';
import type { ClassReport, ResultLine } from './report';

/** An address that can never lead anywhere (RFC 2606): these are names, not places. */
const OURS = 'https://hand-jetting-trainer.invalid';
const EXTENSION = `${OURS}/xapi/extensions`;

/** Of the vocabulary that ADL publishes for xAPI. */
const VERBS = {
  attempted: 'http://adlnet.gov/expapi/verbs/attempted',
  completed: 'http://adlnet.gov/expapi/verbs/completed',
  passed: 'http://adlnet.gov/expapi/verbs/passed',
  failed: 'http://adlnet.gov/expapi/verbs/failed',
} as const;
type Verb = keyof typeof VERBS;
const SIMULATION = 'http://adlnet.gov/expapi/activities/simulation';

/** The language of the title is the instructor's, and nobody asked which (BCP 47: undetermined). */
const SOME_LANGUAGE = 'und';

export interface Statement {
  readonly id: string;
  readonly actor: {
    readonly objectType: 'Agent';
    readonly account: { readonly homePage: string; readonly name: string };
  };
  readonly verb: { readonly id: string; readonly display: Readonly<Record<string, string>> };
  readonly object: {
    readonly objectType: 'Activity';
    readonly id: string;
    readonly definition: { readonly name: Readonly<Record<string, string>>; readonly type: string };
  };
  readonly result?: Readonly<Record<string, unknown>>;
  readonly context: Readonly<Record<string, unknown>>;
}

/** The sign of a learner. A result from elsewhere may say any text, a name perhaps: of that only a fingerprint goes out. */
const signOf = (who: string): string =>
  /^T-\d{2,3}$/.test(who) || isPicture(who) ? who : `other-${nameUuid(`sign\n${who}`).slice(0, 8)}`;

const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

/** Not finished: attempted. Finished: completed, and passed or failed. */
const verbsOf = ({ finished, passed }: ResultLine): Verb[] =>
  finished ? ['completed', passed ? 'passed' : 'failed'] : ['attempted'];

/** What came of it. Who has not finished has no score yet. */
function resultOf(line: ResultLine, verb: Verb): Statement['result'] {
  const { score, spent_s, job_s, categories } = line;
  const judged = verb === 'passed' || verb === 'failed';
  return {
    completion: verb !== 'attempted',
    ...(judged
      ? { success: verb === 'passed', score: { scaled: thousandths(score! / 100), raw: score, min: 0, max: 100 } }
      : {}),
    ...(spent_s === null ? {} : { duration: isoDuration(spent_s) }),
    extensions: {
      [`${EXTENSION}/time-on-the-job`]: isoDuration(job_s ?? 0),
      ...(judged
        ? {
            [`${EXTENSION}/points-by-category`]: Object.fromEntries(
              categories.map(({ id, points, max }) => [id, { points, max }]),
            ),
          }
        : {}),
    },
  };
}

function statement(report: ClassReport, line: ResultLine, verb: Verb): Statement {
  const { exercise, sim } = report;
  const { classCode, attempt, ground, outcome } = line;
  const who = signOf(line.who);
  const ofClass = `${OURS}/class/${classCode ?? '-'}`;
  const said = {
    actor: { objectType: 'Agent', account: { homePage: ofClass, name: who } },
    verb: { id: VERBS[verb], display: { en: verb } },
    object: {
      objectType: 'Activity',
      id: `${OURS}/exercise/${exercise.id}/edition/${exercise.edition}`,
      definition: { name: { [SOME_LANGUAGE]: exercise.title }, type: SIMULATION },
    },
    result: resultOf(line, verb),
    context: {
      // One learner's one attempt: all statements about it have it in common.
      registration: nameUuid(
        ['attempt', exercise.hash, classCode ?? '-', who, attempt ?? `ground ${ground}`].join('\n'),
      ),
      platform: `hand-jetting-trainer ${sim}`,
      contextActivities: { grouping: [{ objectType: 'Activity', id: `${OURS}/lesson/${exercise.lesson}` }] },
      extensions: {
        [`${EXTENSION}/attempt`]: attempt,
        [`${EXTENSION}/ground`]: ground,
        [`${EXTENSION}/outcome`]: outcome?.replace(/^outcome\./, '') ?? null,
        [`${EXTENSION}/fingerprint-of-exercise`]: exercise.hash,
      },
    },
  } as const;
  // The id follows from what is said: said again it is the same, and another thing never takes its place.
  return { id: nameUuid(JSON.stringify(said)), ...said };
}

/**
 * Statements about all results that were reproduced, each once: of the others nothing is known to be so. They have no timestamp, for a result
 * holds none: the store notes when it was told. So a repeat is the same to the last letter.
 */
export function statementsOf(report: ClassReport): Statement[] {
  return report.results
    .filter(({ verdict, repeats }) => verdict === 'reproduced' && !repeats)
    .flatMap((line) => verbsOf(line).map((verb) => statement(report, line, verb)));
}

/** The statements as the text that is posted to a store. */
export const writeStatements = (report: ClassReport): string => `${JSON.stringify(statementsOf(report), null, 2)}\n`;
