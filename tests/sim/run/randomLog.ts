// Random crews for the invariants: any act with any well-formed payload at any time, drawn from one seeded stream.
import {
  act,
  ACTION_NAMES,
  ACTION_SPECS,
  createRun,
  createStream,
  step,
  type ActionName,
  type FieldSpec,
  type Run,
  type Scenario,
  type Stream,
} from '../../../sim';

const pick = <T>(stream: Stream, list: readonly T[]): T => list[Math.floor(stream.uniform() * list.length)];

function anyValue(stream: Stream, field: FieldSpec): unknown {
  switch (field.type) {
    case 'number': {
      // Most draws near the low end, where the acts of a day lie; some anywhere.
      const u = stream.uniform();
      const share = stream.uniform() < 0.7 ? u * u * u : u;
      const value = field.min + share * (field.max - field.min);
      return field.whole ? Math.floor(value) : value;
    }
    case 'boolean':
      return stream.uniform() < 0.7;
    case 'word':
      return pick(stream, field.words);
    default:
      return 'x'.repeat(Math.floor(stream.uniform() * 10));
  }
}

/** Acts that carry the drilling on come up more often, so that random runs get somewhere. */
const OFTEN: readonly ActionName[] = [
  'prime',
  'setThrottle',
  'setThrottle',
  'setTurning',
  'setTurning',
  'setFeed',
  'setFeed',
  'lift',
  'lower',
  'addRod',
  'catchSample',
  'addAdditive',
];
const NEVER: readonly ActionName[] = ['stopDrilling', 'abandon'];
const ANY = ACTION_NAMES.filter((name) => !NEVER.includes(name));

export function anyAct(stream: Stream): { action: ActionName; payload: Record<string, unknown> } {
  const action = stream.uniform() < 0.6 ? pick(stream, OFTEN) : pick(stream, ANY);
  const payload: Record<string, unknown> = {};
  for (const field of ACTION_SPECS[action].fields) {
    if (field.optional && stream.uniform() < 0.5) continue;
    payload[field.name] = anyValue(stream, field);
  }
  if (action === 'waitFor' && payload.time_s === undefined && payload.until === undefined) payload.time_s = 10;
  return { action, payload };
}

const DRILLING: [ActionName, Record<string, unknown>][] = [
  ['setThrottle', { throttle_frac: 1 }],
  ['setTurning', { on: true }],
  ['setFeed', { feed_frac: 1 }],
];

const STOPPING: [ActionName, Record<string, unknown>][] = [
  ['setFeed', { feed_frac: 0 }],
  ['setTurning', { on: false }],
  ['setThrottle', { throttle_frac: 0 }],
];

/** Plays random acts in bursts with drilling between them, and calls watch after each second. Returns how many acts were taken. */
export function playRandom(
  scenario: Scenario,
  seedText: string,
  ticks: number,
  watch: (run: Run) => void,
): { run: Run; tried: number; taken: number } {
  const stream = createStream(seedText);
  const run = createRun(scenario);
  let tried = 0;
  let taken = 0;
  while (run.state.tick < ticks) {
    // Now and then the crew stops and adds a rod.
    if (run.state.tick % 480 === 300) for (const [action, payload] of STOPPING) act(run, action, payload);
    if (run.state.tick % 480 === 302) act(run, 'addRod', {});
    // Now and then the crew pulls itself together and drills for a while.
    if (run.state.tick % 240 === 60) {
      for (const [action, payload] of DRILLING) act(run, action, payload);
    } else if (stream.uniform() < (run.state.tick % 240 < 60 ? 0.2 : 0.02)) {
      const { action, payload } = anyAct(stream);
      tried++;
      if (act(run, action, payload).kind === 'done') taken++;
    }
    step(run);
    watch(run);
  }
  return { run, tried, taken };
}
