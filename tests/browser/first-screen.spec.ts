// What a visitor's browser fetches before the first screen stands: little, and only from here.
import { expect, test } from '@playwright/test';
import { gzipSync } from 'node:zlib';
import { APP_FILE } from '../../src/serve/build.mjs';

const LIMIT_BYTES = 100 * 1000;

test('the first screen needs at most 100 kB of compressed script', async ({ page }) => {
  const scripts: Promise<Buffer>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.push(response.body());
  });
  await page.goto('/', { waitUntil: 'networkidle' });
  const sizes = (await Promise.all(scripts)).map((body) => gzipSync(body).length);
  expect(sizes.length).toBeGreaterThan(0);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(LIMIT_BYTES);
});

test('no request leaves the page own origin, and nothing fails to load', async ({ page, baseURL }) => {
  const asked: string[] = [];
  const failed: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', (response) => {
    if (response.status() >= 400) failed.push(response.url());
  });
  page.on('requestfailed', (request) => failed.push(request.url()));
  page.on('pageerror', (error) => failed.push(error.message));
  await page.goto('/', { waitUntil: 'networkidle' });
  expect(asked.length).toBeGreaterThan(1);
  expect(asked.filter((url) => !url.startsWith(`${baseURL}/`) && !/^(data|blob):/.test(url))).toEqual([]);
  expect(failed).toEqual([]);
});

test('the one file beside the page runs from disk and asks for nothing else', async ({ page, request }) => {
  const answer = await request.get(`/${APP_FILE}`);
  expect(answer.status()).toBe(200);
  const asked: string[] = [];
  page.on('request', (seen) => asked.push(seen.url()));
  const onDisk = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
  await page.goto(onDisk);
  await expect(page.locator('#app')).toContainText(/\w/);
  expect(asked.filter((url) => url !== onDisk && !/^(data|blob):/.test(url))).toEqual([]);
});
