// Every arrow of the machine is walked, and an event that has no arrow where the run is changes nothing.
import { describe, expect, it } from 'vitest';
import {
  drillingMachine,
  firstValue,
  MACHINE_EVENTS,
  valueAfter,
  type MachineEvent,
  type MachineValue,
} from '../../../sim/machine/machine';

type Arrow = { region: keyof MachineValue; from: string; event: MachineEvent; to: string };

interface StateConfig {
  on?: Record<string, string>;
}
const regions = drillingMachine.config.states as Record<
  string,
  { initial?: string; states?: Record<string, StateConfig> }
>;

function arrows(): Arrow[] {
  const found: Arrow[] = [];
  for (const [region, { states }] of Object.entries(regions)) {
    for (const [from, { on }] of Object.entries(states ?? {})) {
      for (const [event, to] of Object.entries(on ?? {})) {
        found.push({ region: region as keyof MachineValue, from, event: event as MachineEvent, to });
      }
    }
  }
  return found;
}

describe('the machine', () => {
  it('starts on site, with everything still', () => {
    expect(firstValue()).toEqual({
      job: 'siteSetup',
      pump: 'stopped',
      stem: 'hanging',
      hole: 'standing',
      returns: 'none',
      fluid: 'water',
    });
  });

  it.each(arrows().map((a) => [`${a.region}: ${a.from} --${a.event}--> ${a.to}`, a] as const))(
    '%s',
    (_title, { region, from, event, to }) => {
      const before = { ...firstValue(), [region]: from } as MachineValue;
      const after = valueAfter(before, event);
      expect(after[region]).toBe(to);
    },
  );

  it('every mode but the first of each region can be reached', () => {
    const targets = new Set(arrows().map((a) => `${a.region}.${a.to}`));
    for (const [region, { initial, states }] of Object.entries(regions)) {
      for (const mode of Object.keys(states ?? {})) {
        if (mode !== initial) expect(targets).toContain(`${region}.${mode}`);
      }
    }
  });

  it('every event has an arrow somewhere', () => {
    const used = new Set(arrows().map((a) => a.event));
    for (const event of MACHINE_EVENTS) expect(used).toContain(event);
  });

  it.each(['handedOver', 'abandoned'] as const)('nothing leads out of a job that is %s', (job) => {
    for (const event of MACHINE_EVENTS) expect(valueAfter({ ...firstValue(), job }, event).job).toBe(job);
  });

  it('a well begins with the casing: neither pack nor seal, washing, test or hand-over before it', () => {
    for (const job of ['siteSetup', 'drilling', 'pullingOut'] as const)
      for (const event of ['packBegins', 'sealBegins', 'developBegins', 'testBegins', 'handOver'] as const)
        expect(valueAfter({ ...firstValue(), job }, event).job).toBe(job);
  });

  it('an event without an arrow changes nothing', () => {
    const value = firstValue();
    expect(valueAfter(value, 'pumpStops')).toEqual(value);
    expect(valueAfter({ ...value, job: 'abandoned' }, 'firstTurn').job).toBe('abandoned');
  });
});
