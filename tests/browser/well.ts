// A whole well in the browser: a run of the lesson with a hole some metres deep and a log of it, brought to the work screen.
import { expect, type Page } from '@playwright/test';
import { lessonById, scenarioOf, writeRunFile } from '../../lessons';
import { createRun } from '../../sim';
import { does, drillTo, until } from '../rig';
import { pasteRun } from './app';
import { atWork } from './work';
import { readCautions } from './cautions';

let kept: string | null = null;

/** Ground number 7 drilled to some 5.9 m, the flow stopped, two layers logged, nothing planned. */
export function drilledFile(): string {
  if (kept !== null) return kept;
  const lesson = lessonById('open-well')!;
  const run = createRun(scenarioOf(lesson, 7));
  const done = (): void => until(run, ({ state }) => state.tasks.length === 0);
  does(run, 'chooseSite', { spot: 'B' });
  does(run, 'setOut', { settling_m3: 0.5, suction_m3: 0.5, channel_m: 1, bit_mm: 125, pump: 'small' });
  done();
  does(run, 'fillPit', { water_L: 940 });
  done();
  does(run, 'addAdditive', { additive: 'polymer', mass_g: 1000, manner: 'sprinkled' });
  done();
  does(run, 'waitFor', { time_s: 1200 });
  until(run, ({ state }) => state.wait === null);
  does(run, 'prime');
  until(run, ({ state }) => state.pump.primed, 400);
  drillTo(run, 5.9);
  does(run, 'setTurning', { on: false });
  does(run, 'setThrottle', { throttle_frac: 0 });
  does(run, 'logLayer', { from_m: 0, to_m: 5, kind: 'fineSand' });
  does(run, 'logLayer', { from_m: 5, to_m: 5.9, kind: 'mediumSand' });
  kept = writeRunFile(run, lesson, { who: 'T-01', name: 'Half a well' });
  return kept;
}

/** Opens that run at the hole. */
export async function atTheDrilledHole(page: Page): Promise<void> {
  await page.goto('/?renderer=canvas#/');
  await pasteRun(page, drilledFile());
  await page.getByRole('button', { name: 'Go on with Half a well' }).click();
  await atWork(page);
}

/** From the start page to the plan of the site, on ground number 7. */
export async function toTheSite(page: Page): Promise<void> {
  await page.goto('/?renderer=canvas#/brief/open-well');
  await readCautions(page);
  await page.getByRole('radio', { name: 'Ground with a number I type' }).check();
  await page.getByRole('textbox', { name: 'Ground number' }).fill('7');
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await expect(page.getByRole('dialog', { name: 'Where to dig' })).toBeVisible({ timeout: 20_000 });
}
