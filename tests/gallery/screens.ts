// The way through the app, screen by screen: each is brought up once in a theme and then taken in every size.
import { lessonById, playCrew, writeRunFile } from '$lessons';
import type { Page } from 'playwright-core';
import { throughTheClass } from './classScreens';
import { runUpTo } from './runs';
import { wellRunFile } from '../browser/wellRun';

/** Takes the screen that is up, under a name. */
export type Take = (name: string) => Promise<void>;

export interface Way {
  readonly page: Page;
  readonly origin: string;
  readonly take: Take;
}

const PLACES = ['runs', 'help', 'words', 'about', 'nowhere'] as const;
const BRIEFS = ['first-rods', 'the-screen', 'open-well'] as const;
async function goTo({ page, origin }: Way, place: string): Promise<void> {
  await page.goto(`${origin}/?renderer=canvas#/${place}`);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
}

async function opened(way: Way, text: string): Promise<void> {
  const { page } = way;
  await goTo(way, 'runs');
  const field = page.getByRole('textbox', { name: 'Text of a run file' });
  if (!(await field.isVisible())) await page.getByText('Or paste the text of a run').click();
  await field.fill(text);
  await page.getByRole('button', { name: 'Open this text' }).click();
}

async function atWork(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: `Go on with ${name}` }).click({ timeout: 120_000 });
  await page.getByRole('timer').waitFor({ timeout: 60_000 });
  await page.getByText('The drawing is being made').waitFor({ state: 'detached', timeout: 60_000 });
}

/** Questions and papers at the hole, by their keys. */
const ASKED: readonly (readonly [key: string, name: string])[] = [
  ['m', 'question, powder'],
  ['l', 'question, a layer'],
  ['w', 'question, the clock'],
  ['h', 'question, a note'],
];

async function theHole(way: Way): Promise<void> {
  const { page, take } = way;
  await opened(way, runUpTo('first-rods', 'careful', 7, 900));
  await atWork(page, 'Under way');
  await take('the hole');
  for (const [key, name] of ASKED) {
    await page.keyboard.press(key);
    await page.getByRole('dialog').waitFor();
    await take(name);
    await page.keyboard.press('Escape');
  }
  await page.getByRole('button', { name: 'Menu' }).click();
  await take('the menu');
  await page.getByRole('button', { name: 'Ask for a hint' }).click();
  await take('hints');
}

async function theWell(way: Way): Promise<void> {
  const { page, take } = way;
  await opened(way, wellRunFile('stopped'));
  await atWork(page, 'Well stopped');
  await take('the drilled hole');
  await page.getByRole('button', { name: /^Plan the well/ }).click();
  await page.getByRole('dialog', { name: 'Plan the well' }).waitFor();
  await take('the planning board');
  await page.keyboard.press('Escape');
  await opened(way, wellRunFile('tested'));
  await atWork(page, 'Well tested');
  await take('the tested well');
}

/** All steps of looking back on a finished run. */
async function theDebrief(way: Way, lessonId: string, crew: string, seed: number): Promise<void> {
  const { page, take } = way;
  const lesson = lessonById(lessonId)!;
  const name = `Run of ${lessonId}`;
  await opened(way, writeRunFile(playCrew(lesson, crew, seed), lesson, { who: 'T-01', name }));
  await page.getByRole('button', { name: `Look back on ${name}` }).click({ timeout: 120_000 });
  await page.getByRole('checkbox').first().waitFor({ timeout: 200_000 });
  await take(`debrief of ${lessonId}, own view`);
  for (const question of await page.locator('main fieldset').all())
    await question.getByRole('checkbox').first().check();
  await page.getByRole('button', { name: 'That is my view' }).click();
  const steps = page.getByRole('navigation', { name: 'Steps' }).getByRole('button');
  await steps.first().waitFor();
  for (const step of (await steps.allTextContents()).slice(1)) {
    const title = step.replace(/^\s*\d\s*/, '').trim();
    await steps.filter({ hasText: title }).click();
    await page.getByRole('heading', { level: 2, name: title }).waitFor();
    await page.getByText('The run is being played again').waitFor({ state: 'detached', timeout: 120_000 });
    if (title === 'What it cost') await page.getByText(/^It is all worked out/).waitFor({ timeout: 300_000 });
    await take(`debrief of ${lessonId}, ${title.toLowerCase()}`);
  }
}

/** Every screen in the theme of that name, as the start page calls it. */
export async function throughTheApp(way: Way, theme: string): Promise<void> {
  const { page, take } = way;
  await goTo(way, '');
  await page.getByRole('radio', { name: theme, exact: true }).check();
  await take('start, nobody chosen');
  await page.getByRole('button', { name: 'Fish' }).click();
  await take('start');
  for (const place of PLACES) {
    await goTo(way, place);
    await take(place);
  }
  for (const id of BRIEFS) {
    await goTo(way, `brief/${id}`);
    // Where a crew has worked before, its work is played first.
    await page.locator('figure').first().waitFor({ timeout: 60_000 });
    await take(`briefing, ${id}`);
  }
  await theHole(way);
  await theWell(way);
  await theDebrief(way, 'first-rods', 'green', 7);
  await theDebrief(way, 'the-seal', 'steady', 2);
  await throughTheClass(way);
}
