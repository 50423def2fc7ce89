// Every formula that a test checks is one that the tick or the verdict calls: physics that nothing reaches fails here.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { programOf } from './program';
import { reachOf } from './reach';

it('the run or the verdict reaches every exported function of the physics', { timeout: 120_000 }, () => {
  const reach = reachOf(programOf());
  expect(reach.looked).toBeGreaterThan(50);
  expect(reach.unreached).toEqual([]);
});

describe('on a small tree', () => {
  let root: string;
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'reach-'));
    write(
      'sim/run/step.ts',
      "import { slip } from '../hole/slip';\nexport function step(): number { return slip(1); }",
    );
    write('sim/run/spare.ts', "import { spare } from '../hole/spare';\nexport const unused = (): number => spare();");
    write(
      'sim/hole/slip.ts',
      "import * as root from '../numeric/root';\nexport const slip = (d: number) => root.solve(d);",
    );
    write(
      'sim/numeric/root.ts',
      'export function solve(x: number): number { return x; }\nfunction inner() {}\ninner();',
    );
    write('sim/hole/spare.ts', 'const spare = () => 1;\nexport { spare };');
    write('sim/index.ts', "export { step } from './run/step';\nexport { spare } from './hole/spare';");
    write('lessons/index.ts', 'export const LESSONS = [];');
  });
  afterEach(() => rmSync(root, { recursive: true }));

  function write(path: string, text: string): void {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  const reach = () => reachOf(programOf(root), root);

  it('follows calls through imports of every form, and an offer at the door reaches nothing', () => {
    expect(reach()).toEqual({ looked: 3, unreached: ['sim/hole/spare.ts: spare'] });
  });

  it('takes a use by a lesson as a use', () => {
    write('lessons/verdict.ts', "import { spare } from '$sim';\nexport const verdict = () => spare();");
    write('lessons/index.ts', "export { verdict } from './verdict';");
    expect(reach().unreached).toEqual([]);
  });

  it('does not take the name of a type for a call', () => {
    write(
      'sim/run/step.ts',
      "import { spare } from '../hole/spare';\nexport function step(x: ReturnType<typeof spare>): number { return x; }",
    );
    expect(reach().unreached).toEqual([
      'sim/hole/slip.ts: slip',
      'sim/hole/spare.ts: spare',
      'sim/numeric/root.ts: solve',
    ]);
  });

  it('says so where there is no step', () => {
    rmSync(join(root, 'sim/run/step.ts'));
    expect(reach).toThrow('sim/run/step.ts does not export step');
  });
});
