// The file that a press in the page hands to the browser to keep.
import { expect, type Page } from '@playwright/test';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

export interface Saved {
  readonly name: string;
  readonly text: string;
}

/**
 * Playwright does not report what the system's own Firefox saves, for that browser gives no number with it; the file
 * itself lands in the folder named in the settings, which only this worker's browser writes to.
 */
export async function savedBy(page: Page, press: () => Promise<void>): Promise<Saved> {
  return page.context().browser()?.browserType().name() === 'firefox' ? fromFolder(press) : fromEvent(page, press);
}

async function fromEvent(page: Page, press: () => Promise<void>): Promise<Saved> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

async function fromFolder(press: () => Promise<void>): Promise<Saved> {
  const folder = process.env.TEST_DOWNLOADS!;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  await press();
  // While it is being written, a second file ending in .part stands beside it.
  const files = (): string[] => (existsSync(folder) ? readdirSync(folder) : []);
  await expect.poll(() => files().length === 1 && readFileSync(join(folder, files()[0])).length > 0).toBe(true);
  const [name] = files();
  return { name, text: readFileSync(join(folder, name), 'utf8') };
}
