// The text log alone is enough to pass a drill: a player who reads only its lines, and the number of the rod, does it by them.
import { beforeAll, describe, expect, it } from 'vitest';
import { createRun, type ActionName, type Payload } from '../../../sim';
import { grade, lessonById, scenarioOf } from '../../../lessons';
import { Session } from '../../../src/app/session.svelte';
import { addMessages, say } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

const lesson = lessonById('first-rods')!;
const ROD_m = 1.5;
const RODS = 3;
const ROPE_LINES: readonly string[] = ['work.rope.sentenceSinking', 'work.rope.sentenceStill'];
/** Somebody who waits for a line loses patience after so long, s. */
const PATIENCE_s = 900;

beforeAll(() => addMessages(laterMessages));

/** Plays by the lines of the log: says what to do, and waits for the line that tells of it. */
class Reader {
  readonly session: Session;

  constructor(seed: number) {
    const run = createRun(scenarioOf(lesson, seed));
    this.session = new Session({ lesson, run, frames: { request: () => 1, cancel: () => undefined } });
  }

  /** The last line of the log, by its number. */
  get line(): number {
    return this.session.messages.at(-1)?.number ?? 0;
  }

  /** Lets the clock go until one of these lines comes after another line, or patience is at its end. Gives it back. */
  hears(after: number, ...keys: readonly string[]): string | null {
    for (let waited_s = 0; waited_s < PATIENCE_s && !this.session.finished; waited_s++) {
      const line = this.session.messages.find(({ number, key }) => number > after && keys.includes(key));
      if (line) return line.key;
      this.session.stepOnce();
    }
    return null;
  }

  /** Does an act and waits for a line that tells of it. */
  does(action: ActionName, payload: Payload = {}, ...keys: readonly string[]): string | null {
    const before = this.line;
    this.session.act(action, payload);
    return keys.length > 0 ? this.hears(before, ...keys) : null;
  }
}

/** Powder first, a handful at a time; then the pump. */
function begin(reader: Reader): void {
  for (const caution of lesson.hazards) reader.does('readCaution', { caution });
  for (const mass_g of [350, 350, 350])
    reader.does('addAdditive', { additive: 'polymer', mass_g, manner: 'sprinkled' }, 'event.taskDone.addAdditive');
  while (reader.does('prime', {}, 'event.primed', 'event.primeFailed') === 'event.primeFailed');
}

/** Drills to the foot of a rod: more feed while the log says that the stem hardly sinks, less when it sinks fast. */
function drillDown(reader: Reader): void {
  let feed_frac = 0.6;
  let last = reader.line;
  reader.does('setFeed', { feed_frac });
  while (!reader.session.finished && reader.hears(last, 'event.rodDown', ...ROPE_LINES) !== 'event.rodDown') {
    const heard = reader.session.messages.find(({ number, key }) => number > last && ROPE_LINES.includes(key));
    if (!heard) throw new Error('Nothing is told for a quarter of an hour.');
    last = heard.number;
    const rate_cmmin = Number(heard.data['rate_cmmin'] ?? 0);
    if (rate_cmmin < 10) feed_frac = Math.min(1, feed_frac + 0.2);
    else if (rate_cmmin > 45) feed_frac = Math.max(0.3, feed_frac - 0.2);
    reader.does('setFeed', { feed_frac });
  }
}

/** One rod: down, a sample of its foot, the bit lifted, the hole cleared, all at rest. */
function drillRod(reader: Reader, rods: number): void {
  reader.does('setThrottle', { throttle_frac: 1 }, 'event.returnsBack');
  reader.does('setTurning', { on: true });
  drillDown(reader);
  const foot = reader.line;
  reader.does('setFeed', { feed_frac: 0 });
  reader.does('catchSample', { label_m: rods * ROD_m }, 'event.sampleCaught');
  reader.does('lift', { distance_m: 0.25, speed_ms: 0.05 });
  reader.hears(foot, 'event.clear');
  reader.does('setTurning', { on: false });
  reader.does('setThrottle', { throttle_frac: 0 }, 'event.flowStopped');
}

describe('the text log alone', () => {
  it.each([1, 2, 3, 4, 5])('is enough to pass the first rods on ground %i', (seed) => {
    const reader = new Reader(seed);
    begin(reader);
    drillRod(reader, 1);
    for (let rods = 2; rods <= RODS; rods++) {
      expect(reader.does('addRod', {}, 'event.rodAdded')).toBe('event.rodAdded');
      drillRod(reader, rods);
    }
    reader.does('stopDrilling');
    const { score, passed, outcome } = grade(reader.session.run, lesson);
    expect(outcome.key).toBe('outcome.reached');
    // Without a look into the tray the samples stay without names.
    expect(score).toBeGreaterThan(85);
    expect(passed).toBe(true);
  });

  it('is told in whole sentences', () => {
    const reader = new Reader(1);
    begin(reader);
    drillRod(reader, 1);
    for (const { key, data } of reader.session.messages) expect(say(key, data)).toMatch(/^[A-Z].+\.$/);
    expect(new Set(reader.session.messages.map(({ key }) => key)).size).toBeGreaterThan(8);
  });
});
