// The order of the unit test files: those that play many whole runs come first, so that no worker is left alone with them at the end.
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Paths of files that take many seconds though they are short: by size alone they would come last. */
const LONG = [
  /lessons\/calibration\/.*well/,
  /lessons\/exercises\/(shipped|rejected)/,
  /lessons\/open-hole/,
  /lessons\/calibration\//,
  /lessons\/.*well\.test/,
];

export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const found = LONG.findIndex((path) => path.test(moduleId));
      return found < 0 ? LONG.length : found;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
