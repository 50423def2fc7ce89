// The moments of a run: before each accepted act, and at every fifth minute of the job while nothing is done. Neighbours are joined until no more than sixty stretches are left.

import type { ActionName, LogEntry, Run, RunEvent } from '$sim';
import { entriesBefore, startTick } from '../own';

/** A place in a run between two entries of its log: the acts of this tick up to `entries` are done, the next is not. */
export interface Moment {
  readonly tick: number;
  readonly entries: number;
}

/** Most stretches that a run is parted into. Design: teaching.md reckons its times with as many. */
export const MOST_STRETCHES = 60;

/** Waiting is looked at whenever so many job seconds have passed since the job began. */
export const WAITED_s = 300;
/** Acts that follow each other within so many seconds are one doing. ASSUMED: as fast as hands and taps are. */
export const BURST_s = 5;
/** Slight acts part the run no finer than this, s. */
const SLIGHT_APART_s = 60;

/** Acts that settle something which later acts build on: the stretch before them keeps its edge longest. */
const SETTLING: readonly ActionName[] = [
  'chooseSite',
  'setOut',
  'addAdditive',
  'addRod',
  'stopDrilling',
  'planWell',
  'pullOut',
  'runCasing',
  'workCasing',
  'pourPack',
  'backfill',
  'placeSeal',
  'breakPolymer',
  'develop',
  'yieldTest',
  'disinfect',
  'headWorks',
  'abandon',
  'handOver',
];
/** Acts of the moment and of the book: their edges go first, after those of waiting. */
const SLIGHT: readonly ActionName[] = [
  'setFeed',
  'setTurning',
  'note',
  'nameSample',
  'logLayer',
  'record',
  'readCaution',
  'useHint',
  'goBack',
  'waitFor',
  'takeSeat',
];

interface Edge extends Moment {
  /** 3 settling, 2 any act, 1 slight, 0 waiting; ends of the run are never joined away. */
  readonly worth: number;
}

const worthOf = (action: ActionName): number => (SETTLING.includes(action) ? 3 : SLIGHT.includes(action) ? 1 : 2);

/** Indices of the entries that were carried out. Of equal acts in one second the first ones count as the refused. */
export function acceptedEntries(log: readonly LogEntry[], events: readonly RunEvent[]): number[] {
  const refused = new Map<string, number>();
  for (const { tick, name, data } of events) {
    if (name !== 'refused') continue;
    const key = `${tick} ${data.action}`;
    refused.set(key, (refused.get(key) ?? 0) + 1);
  }
  return [...log.keys()].filter((index) => {
    const key = `${log[index]![0]} ${log[index]![1]}`;
    const left = refused.get(key) ?? 0;
    if (left > 0) refused.set(key, left - 1);
    return left === 0;
  });
}

/** An edge before each burst of acts, worth what its weightiest act is. */
function edgesAtActs(log: readonly LogEntry[], events: readonly RunEvent[], from: Moment): Edge[] {
  const edges: Edge[] = [];
  let last_tick = -Infinity;
  for (const index of acceptedEntries(log, events)) {
    if (index < from.entries) continue;
    const [tick, action] = log[index]!;
    const worth = worthOf(action);
    const open = edges.at(-1);
    if (open && tick - last_tick <= BURST_s) edges[edges.length - 1] = { ...open, worth: Math.max(open.worth, worth) };
    else edges.push({ tick, entries: index, worth });
    last_tick = tick;
  }
  return edges;
}

/** Without the edges at slight acts that lie close behind another. */
function thinned(edges: readonly Edge[]): Edge[] {
  const left: Edge[] = [];
  for (const edge of edges)
    if (edge.worth > 1 || edge.tick - (left.at(-1)?.tick ?? -Infinity) >= SLIGHT_APART_s) left.push(edge);
  return left;
}

/** More edges where nothing was done for long. */
function withWaiting(edges: readonly Edge[], end: Moment, log: readonly LogEntry[]): Edge[] {
  const all: Edge[] = [];
  edges.forEach((edge, i) => {
    all.push(edge);
    const next = edges[i + 1] ?? end;
    let entries = edge.entries;
    for (let tick = Math.ceil(edge.tick / WAITED_s) * WAITED_s; tick + BURST_s < next.tick; tick += WAITED_s) {
      if (tick - edge.tick <= BURST_s) continue;
      while (entries < next.entries && log[entries]![0] < tick) entries++;
      all.push({ tick, entries, worth: 0 });
    }
  });
  return all;
}

/** Takes the least worthy edges away, of equals the one that parts the shortest stretches, until so many are left. */
function joined(edges: readonly Edge[], most: number): Edge[] {
  const left = [...edges];
  while (left.length > most) {
    let least = 1;
    for (let i = 2; i < left.length - 1; i++) if (comesFirst(left, i, least)) least = i;
    left.splice(least, 1);
  }
  return left;
}

function comesFirst(edges: readonly Edge[], one: number, other: number): boolean {
  const a = edges[one]!;
  const b = edges[other]!;
  if (a.worth !== b.worth) return a.worth < b.worth;
  const span = (i: number): number => edges[i + 1]!.tick - edges[i - 1]!.tick;
  return span(one) < span(other);
}

/** Where the learner took the run over from a crew before; else its beginning. */
const takenOver = (run: Pick<Run, 'log' | 'state'>): Moment => ({ tick: startTick(run), entries: entriesBefore(run) });

/** Entries up to which the learner acted: the rest may have been left to a crew. */
function ownUpTo(log: readonly LogEntry[]): number {
  const left = log.findLastIndex(([, action]) => action === 'leaveToCrew');
  return left < 0 ? log.length : left;
}

/** The moments of a finished run as far as the learner made it, first and last included; between two of them lies a stretch. */
export function momentsOf(run: Pick<Run, 'log' | 'record' | 'state'>, most = MOST_STRETCHES): Moment[] {
  const from = takenOver(run);
  const last = ownUpTo(run.log);
  const end: Edge = { tick: run.state.tick, entries: run.log.length, worth: Infinity };
  const start: Edge = { ...from, worth: Infinity };
  const acts = edgesAtActs(run.log, run.record.events, from).filter(
    ({ tick, entries }) => tick > from.tick + BURST_s && tick < end.tick && entries <= last,
  );
  const edges = withWaiting(thinned([start, ...acts]), end, run.log).filter(({ entries }) => entries <= last);
  return joined([...edges, end], most + 1).map(({ tick, entries }) => ({ tick, entries }));
}
