// What a page cannot show whole.
import type { Page } from '@playwright/test';

/** What sticks out of the page to the right, and what is cut off inside its own box; of a part alone where one is named. */
export async function clipped(page: Page, part = 'body'): Promise<string[]> {
  return page.evaluate((within) => {
    const wide: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth) wide.push(`page ${root.scrollWidth} > ${root.clientWidth}`);
    for (const element of document.querySelectorAll<HTMLElement>(`${within} *`)) {
      if (element.closest('.unseen, svg, dialog:not([open])') || element.checkVisibility?.() === false) continue;
      const style = getComputedStyle(element);
      if (style.display === 'inline' || element.matches('input, textarea')) continue;
      if (element.scrollWidth > element.clientWidth + 1 && style.overflowX !== 'auto' && element.clientWidth > 0)
        wide.push(`${element.tagName}.${element.className} "${element.textContent?.trim().slice(0, 40)}"`);
    }
    return wide;
  }, part);
}
