// A run that notes every change of mode, every event and every refusal it meets.
import { expect } from 'vitest';
import {
  act,
  createRun,
  step,
  type ActionName,
  type EventName,
  type MachineValue,
  type Payload,
  type RefusalKey,
  type Run,
  type Scenario,
} from '../../../sim';
import { does, rigScenario, until, type RigOptions } from '../../rig';

const REGIONS = ['job', 'pump', 'stem', 'hole', 'returns', 'fluid'] as const;
export const walked = new Set<string>();
export const told = new Set<EventName>();
export const refused = new Set<RefusalKey>();

/** A run that notes every change of mode, every event and every refusal. */
export class Walk {
  private before: MachineValue;
  private seen: number;

  constructor(readonly run: Run) {
    this.before = run.state.machine;
    this.seen = run.record.events.length;
  }

  private note(): void {
    const now = this.run.state.machine;
    for (const region of REGIONS)
      if (now[region] !== this.before[region]) walked.add(`${region}: ${this.before[region]} -> ${now[region]}`);
    this.before = now;
    for (const event of this.run.record.events.slice(this.seen)) told.add(event.name);
    this.seen = this.run.record.events.length;
  }

  go(seconds = 1): this {
    for (let i = 0; i < seconds; i++) {
      step(this.run);
      this.note();
    }
    return this;
  }

  do(name: ActionName, payload: Payload = {}): this {
    does(this.run, name, payload);
    this.note();
    return this;
  }

  refuses(name: ActionName, payload: Payload, reason: RefusalKey): this {
    expect(act(this.run, name, payload), `${name} for ${reason}`).toEqual({ kind: 'refused', reason });
    refused.add(reason);
    this.note();
    return this;
  }

  until(reached: (run: Run) => boolean, most = 7200): this {
    until(
      this.run,
      (run) => {
        this.note();
        return reached(run);
      },
      most,
    );
    return this;
  }

  idle(most = 7200): this {
    return this.until(({ state }) => state.tasks.length === 0, most);
  }

  mode(region: keyof MachineValue, mode: string): this {
    return this.until(({ state }) => state.machine[region] === mode);
  }

  /** Lets so much time pass in one wait, or until what was waited for is there. */
  wait(payload: Payload): this {
    return this.do('waitFor', payload).until(({ state }) => state.wait === null, 100_000);
  }

  /** Ground of one class falls round the stem to this height, as in a cave. */
  cave(fill_m: number, classIndex = 6): this {
    const { hole, boundary } = this.run.state;
    const grains_m3 = Math.PI * (0.05 ** 2 - 0.01685 ** 2) * fill_m * 0.55;
    hole.bed_m3[classIndex] += grains_m3;
    hole.bedMoment_m4[classIndex] += grains_m3 * hole.depth_m;
    boundary.solidsIn_m3[classIndex] += grains_m3;
    return this;
  }
}

/** A walk from the start of a job. */
export function walkOn(
  change: Partial<Scenario['opening']> = {},
  options: RigOptions = {},
  scenario: Partial<Scenario> = {},
): Walk {
  const base = rigScenario(options);
  return new Walk(createRun({ ...base, ...scenario, opening: { ...base.opening, ...change } }));
}
