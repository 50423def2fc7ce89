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
  readonly run: Run;
  private before: MachineValue;
  private seen = 0;

  constructor(change: Partial<Scenario['opening']> = {}, options: RigOptions = {}, scenario: Partial<Scenario> = {}) {
    const base = rigScenario(options);
    this.run = createRun({ ...base, ...scenario, opening: { ...base.opening, ...change } });
    this.before = this.run.state.machine;
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

  idle(): this {
    return this.until(({ state }) => state.tasks.length === 0);
  }

  mode(region: keyof MachineValue, mode: string): this {
    return this.until(({ state }) => state.machine[region] === mode);
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
