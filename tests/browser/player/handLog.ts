// The log that is played: a careful run of a lesson made here, each deed as the hands on the screen can do it.
import { crewFor, grade, isOver, playOn, restCrew, startRun, type Lesson } from '../../../lessons';
import { act, hashRun, sensesOf, step, type ActionName, type Payload, type Senses } from '../../../sim';
import { asHandsCan } from './reach';

export interface HandAct {
  /** Job second at which it is done. */
  readonly tick: number;
  readonly action: ActionName;
  readonly payload: Payload;
  /** Done in vain: the crew learns from the refusal, and so it is done in vain on the screen too. */
  readonly refused: boolean;
}

export interface HandLog {
  readonly lesson: Lesson;
  readonly seed: number;
  /** Job second at which the learner begins. */
  readonly start: number;
  readonly acts: readonly HandAct[];
  /** How the run ends. */
  readonly ticks: number;
  readonly hash: string;
  readonly score: number;
  readonly passed: boolean;
}

/** Plays a lesson with care on the ground of a seed, up to its end; where the rest may be left to another crew, it is. */
export function handLog(lesson: Lesson, seed: number): HandLog {
  const run = startRun(lesson, seed);
  const crew = crewFor(run, lesson, 'careful');
  const start = run.state.tick;
  for (const caution of lesson.hazards) act(run, 'readCaution', { caution });
  const acts: HandAct[] = [];
  const does = (action: ActionName, payload: Payload): void => {
    const { tick } = run.state;
    const { kind } = act(run, action, payload);
    if (kind === 'malformed') throw new Error(`${action} ${JSON.stringify(payload)} is malformed`);
    acts.push({ tick, action, payload, refused: kind === 'refused' });
  };
  // The crew watches the feed that it asked for; the stepper that stands next to it is not a feed to be mended.
  let asked = { feed_frac: 0, set_frac: 0 };
  const seen = (): Senses => {
    const senses = sensesOf(run);
    if (senses.stem.feed_frac !== asked.set_frac) return senses;
    return { ...senses, stem: { ...senses.stem, feed_frac: asked.feed_frac } };
  };
  while (!isOver(run, lesson)) {
    if (run.state.leaving === 'offered') {
      does('leaveToCrew', {});
      playOn(run, lesson, restCrew(run, lesson)!);
      break;
    }
    const deed = crew.decide(seen());
    const done = deed && asHandsCan(run, lesson, deed);
    if (done) does(done.action, done.payload);
    if (deed?.action === 'setFeed')
      asked = { feed_frac: Number(deed.payload.feed_frac), set_frac: run.state.stem.feed_frac };
    do {
      if (!isOver(run, lesson)) step(run);
    } while (run.state.wait !== null && !isOver(run, lesson));
  }
  const { score, passed } = grade(run, lesson);
  return { lesson, seed, start, acts, ticks: run.state.tick, hash: hashRun(run), score, passed };
}
