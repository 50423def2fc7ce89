// The same run has the same hash in Node, Chromium and Firefox: files made in Node are played again there, and in a
// bare page of each browser.
import { chromium, firefox } from '@playwright/test';
import { lessonById, playCrew, replayFile, runFileOf, type RunFile } from '$lessons';
import { deepAndShallow, holeFile } from '../lessons/openHole';
import { bundleForPage } from '../browser/bundle';
import { CHROMIUM_ARGS, findBrowser } from '../run/browsers.mjs';
import type { Claim, Sweep } from './sweep';

const LESSONS = 50;
const HOLES = 200;
const FILES_PER_TASK = 25;
const ENGINES = ['chromium', 'firefox', 'node'] as const;
type Engine = (typeof ENGINES)[number];

interface Task {
  readonly engine: Engine;
  readonly what: 'first-rods' | 'open-hole';
  readonly first: number;
}
interface Result {
  readonly version: string;
  readonly same: number;
  readonly different: number[];
}
interface InPage {
  readonly jetting: { replayFile(file: unknown): { hash: string; reproduced: boolean } };
}

/** Through the text of a file, as when it is saved and opened again. */
function lessonFile(index: number): RunFile {
  const lesson = lessonById('first-rods')!;
  const run = playCrew(lesson, index % 2 === 0 ? 'careful' : 'green', index + 1);
  return JSON.parse(JSON.stringify(runFileOf(run, lesson))) as RunFile;
}

function filesOf({ what, first }: Task): RunFile[] {
  if (what === 'open-hole')
    return deepAndShallow(HOLES)
      .slice(first, first + FILES_PER_TASK)
      .map(holeFile);
  return Array.from({ length: FILES_PER_TASK }, (_, i) => lessonFile(first + i));
}

const tasksOf = (engine: Engine, what: Task['what'], count: number): Task[] =>
  Array.from({ length: count / FILES_PER_TASK }, (_, i) => ({ engine, what, first: i * FILES_PER_TASK }));

const sweep: Sweep<Task, Result> = {
  title: `files of ${LESSONS} runs and ${HOLES} whole holes made in Node are reproduced in Node and in two browsers`,

  tasks: () =>
    ENGINES.flatMap((engine) => [...tasksOf(engine, 'first-rods', LESSONS), ...tasksOf(engine, 'open-hole', HOLES)]),

  async run(task) {
    const files = filesOf(task);
    const { version, same } = task.engine === 'node' ? inNode(files) : await inPage(task.engine, files);
    const different = files.filter((_, index) => !same[index]).map(({ seed }) => seed);
    return { version, same: files.length - different.length, different };
  },

  judge: (done): Claim[] =>
    ENGINES.flatMap((engine) =>
      (['first-rods', 'open-hole'] as const).map((what) => {
        const own = done.filter(({ task }) => task.engine === engine && task.what === what);
        const same = own.reduce((sum, { result }) => sum + result.same, 0);
        const different = own.flatMap(({ result }) => result.different);
        const wanted = what === 'first-rods' ? LESSONS : HOLES;
        return {
          text:
            `${same} of ${wanted} of ${what} are the same in ${engine} ${own[0].result.version}` +
            (different.length > 0 ? `; seeds that differ: ${different.join(', ')}` : ''),
          holds: different.length === 0 && same === wanted,
        };
      }),
    ),
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
