// The same run has the same hash in Node, Chromium and Firefox: files made in Node are played again in a bare page.
import { chromium, firefox } from '@playwright/test';
import { lessonById, playCrew, runFileOf } from '$lessons';
import { bundleForPage } from '../browser/bundle';
import { CHROMIUM_ARGS, findBrowser } from '../run/browsers.mjs';
import type { Claim, Sweep } from './sweep';

const SEEDS = 50;

interface Task {
  readonly engine: 'chromium' | 'firefox';
}
interface Result {
  readonly version: string;
  readonly same: number;
  readonly different: number[];
}
interface InPage {
  readonly jetting: { replayFile(file: unknown): { hash: string; reproduced: boolean } };
}

const sweep: Sweep<Task, Result> = {
  title: `${SEEDS} run files made in Node are reproduced in two browsers`,

  tasks: () => [{ engine: 'chromium' }, { engine: 'firefox' }],

  async run({ engine }) {
    const lesson = lessonById('first-rods')!;
    const files = Array.from({ length: SEEDS }, (_, index) =>
      runFileOf(playCrew(lesson, index % 2 === 0 ? 'careful' : 'green', index + 1), lesson),
    );
    const executablePath = findBrowser(engine) ?? undefined;
    const browser =
      engine === 'chromium'
        ? await chromium.launch({ executablePath, args: CHROMIUM_ARGS })
        : await firefox.launch({ executablePath, channel: 'moz-firefox' });
    try {
      const page = await browser.newPage();
      await page.addScriptTag({ content: await bundleForPage('lessons/index.ts', 'jetting') });
      const different: number[] = [];
      for (const file of files) {
        const plain: unknown = JSON.parse(JSON.stringify(file));
        const replayed = await page.evaluate((given) => {
          const { hash, reproduced } = (window as unknown as InPage).jetting.replayFile(given);
          return { hash, reproduced };
        }, plain);
        if (!replayed.reproduced || replayed.hash !== file.hash) different.push(file.seed);
      }
      return { version: browser.version(), same: files.length - different.length, different };
    } finally {
      await browser.close();
    }
  },

  judge: (done): Claim[] =>
    done.map(({ task, result }) => ({
      text:
        `${result.same} of ${SEEDS} are the same in ${task.engine} ${result.version}` +
        (result.different.length > 0 ? `; seeds that differ: ${result.different.join(', ')}` : ''),
      holds: result.different.length === 0 && result.same === SEEDS,
    })),
};
export default sweep;
