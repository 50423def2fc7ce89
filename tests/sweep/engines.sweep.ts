// The same run has the same hash in Node, Chromium and Firefox: files made in Node are played again there, and in a
// bare page of each browser.
import { chromium, firefox } from '@playwright/test';
import { lessonById, playCrew, replayFile, runFileOf, type RunFile } from '$lessons';
import { bundleForPage } from '../browser/bundle';
import { CHROMIUM_ARGS, findBrowser } from '../run/browsers.mjs';
import type { Claim, Sweep } from './sweep';

const SEEDS = 50;

interface Task {
  readonly engine: 'node' | 'chromium' | 'firefox';
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
  title: `${SEEDS} run files made in Node are reproduced in Node and in two browsers`,

  tasks: () => [{ engine: 'chromium' }, { engine: 'firefox' }, { engine: 'node' }],

  async run({ engine }) {
    const lesson = lessonById('first-rods')!;
    // Through the text of a file, as when it is saved and opened again.
    const files = Array.from({ length: SEEDS }, (_, index) => {
      const run = playCrew(lesson, index % 2 === 0 ? 'careful' : 'green', index + 1);
      return JSON.parse(JSON.stringify(runFileOf(run, lesson))) as RunFile;
    });
    const { version, same } = engine === 'node' ? inNode(files) : await inPage(engine, files);
    const different = files.filter((_, index) => !same[index]).map(({ seed }) => seed);
    return { version, same: files.length - different.length, different };
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

interface Replays {
  readonly version: string;
  readonly same: readonly boolean[];
}

function inNode(files: readonly RunFile[]): Replays {
  const same = files.map((file) => {
    const { reproduced, hash } = replayFile(file);
    return reproduced && hash === file.hash;
  });
  return { version: process.version, same };
}

async function inPage(engine: 'chromium' | 'firefox', files: readonly RunFile[]): Promise<Replays> {
  const executablePath = findBrowser(engine) ?? undefined;
  const browser =
    engine === 'chromium'
      ? await chromium.launch({ executablePath, args: CHROMIUM_ARGS })
      : await firefox.launch({ executablePath, channel: 'moz-firefox' });
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: await bundleForPage('lessons/index.ts', 'jetting') });
    const same: boolean[] = [];
    for (const file of files) {
      const replayed = await page.evaluate((given) => {
        const { hash, reproduced } = (window as unknown as InPage).jetting.replayFile(given);
        return { hash, reproduced };
      }, file as unknown);
      same.push(replayed.reproduced && replayed.hash === file.hash);
    }
    return { version: browser.version(), same };
  } finally {
    await browser.close();
  }
}
