// Scenarios with a change in ground, sky, day or opening, and what the trade tests ask of a run.
import { expect } from 'vitest';
import { ledgerOf, type Run, type Scenario } from '../../sim';
import { rigScenario, type RigOptions } from '../rig';

export const told = (run: Run, name: string): number => run.record.events.filter((e) => e.name === name).length;

export type Change = Partial<Omit<Scenario, 'opening'>> & { opening?: Partial<Scenario['opening']> };

export function changedScenario(change: Change, options: RigOptions = {}): Scenario {
  const base = rigScenario(options);
  return { ...base, ...change, opening: { ...base.opening, ...change.opening } };
}

export function expectBalanced(run: Run): void {
  const { water, solids, polymer, additives } = ledgerOf(run);
  expect(Math.max(water, solids, polymer, additives)).toBeLessThanOrEqual(1e-9);
}
