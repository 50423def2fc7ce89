// The cautions of a briefing, tapped through one by one, or all at once where the learner has been through them before.
import { expect, type Page } from '@playwright/test';

/** Returns how many cautions were shown one by one. */
export async function readCautions(page: Page): Promise<number> {
  const next = page.getByRole('button', { name: 'Next caution', exact: true });
  const read = page.getByRole('button', { name: 'I have read these cautions', exact: true });
  await expect(next.or(read)).toBeVisible();
  let seen = 1;
  for (; await next.isVisible(); seen++) await next.click();
  await read.click();
  return seen;
}
