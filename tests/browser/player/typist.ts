// Hands on a keyboard alone: letter keys for the hands, Tab and Enter or the arrow keys in the questions.
import { expect, type Locator, type Page } from '@playwright/test';
import { onScreen, type Hands } from './hands';

/** More controls than any question or screen has. */
const MOST_TABS = 120;

const isFocused = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);

/** Does the control stand before the one that has the focus? A question follows what it lies over, and is worked from its top. */
const isBefore = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => {
    const { activeElement } = document;
    return (
      activeElement !== null && (activeElement.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING) > 0
    );
  });

/** Goes with Tab to a control, or back to it: a Tab beyond the last one leaves the page for the bars of the browser. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let n = 0; n < MOST_TABS; n++) {
    if (await isFocused(target)) return;
    await page.keyboard.press((await isBefore(target)) ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`Tab does not come to ${target}`);
}

export function typist(page: Page): Hands {
  const press = async (target: Locator, times = 1): Promise<void> => {
    await tabTo(page, target);
    for (let n = 0; n < times; n++) await page.keyboard.press('Enter');
  };
  return {
    page,
    press,
    async hand(hand, times = 1) {
      if (hand.key === undefined) await press(onScreen(page, hand), times);
      else for (let n = 0; n < times; n++) await page.keyboard.press(hand.key);
    },
    async choose(group, name) {
      const wanted = group.getByRole('radio', { name, exact: true });
      const chosen = group.getByRole('radio', { checked: true });
      // Tab comes to the one that is chosen, or to the first where none is.
      await tabTo(page, (await chosen.count()) > 0 ? chosen : group.getByRole('radio').first());
      if (!(await wanted.isChecked())) await page.keyboard.press('Space');
      for (let n = 0; n < MOST_TABS && !(await wanted.isChecked()); n++) await page.keyboard.press('ArrowDown');
      await expect(wanted).toBeChecked();
    },
    async write(field, text) {
      await tabTo(page, field);
      await page.keyboard.type(text);
    },
    async seconds(count) {
      await page.keyboard.press('s');
      // Held down: the key comes again and again by itself.
      await page.evaluate((times) => {
        const key = { key: 's', bubbles: true, cancelable: true, repeat: true };
        for (let n = 0; n < times; n++) document.activeElement!.dispatchEvent(new KeyboardEvent('keydown', key));
      }, count - 1);
    },
    async clock() {
      await page.keyboard.press('w');
    },
  };
}
