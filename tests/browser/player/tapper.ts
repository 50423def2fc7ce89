// Hands that tap, on a phone. The system's Firefox makes no press of a touch on a desktop, so there it is a click.
import type { Locator, Page } from '@playwright/test';
import { button } from '../work';
import { asked, onScreen, type Hands } from './hands';

export async function tap(target: Locator, force = false): Promise<void> {
  const touches = target.page().context().browser()?.browserType().name() === 'chromium';
  await (touches ? target.tap({ force }) : target.click({ force }));
}

/** More taps of what has just been tapped, as fast as a finger is put down. */
async function again(target: Locator, times: number): Promise<void> {
  const page = target.page();
  const touches = page.context().browser()?.browserType().name() === 'chromium';
  for (let n = 0; n < times; n++) {
    const { x, y, width, height } = (await target.boundingBox())!;
    const [across, down] = [x + width / 2, y + height / 2];
    await (touches ? page.touchscreen.tap(across, down) : page.mouse.click(across, down));
  }
}

export function tapper(page: Page): Hands {
  const press = async (target: Locator, times = 1, inVain = false): Promise<void> => {
    if (times > 0) await tap(target, inVain);
    if (times > 1) await again(target, times - 1);
  };
  const clock = (): Promise<void> => tap(page.getByRole('button', { name: /^Clock:/ }));
  return {
    page,
    press,
    clock,
    async hand(hand, times = 1, inVain = false) {
      const atWell = page.getByRole('tab', { name: 'Well', exact: true });
      const moved = hand.movesToWell && (await atWell.count()) > 0;
      const own = page.getByRole('tab', { name: hand.tab, exact: true });
      const gone = hand.laterTab !== undefined && (await own.count()) === 0;
      const tab = moved ? atWell : gone ? page.getByRole('tab', { name: hand.laterTab!, exact: true }) : own;
      if ((await tab.getAttribute('aria-selected')) !== 'true') await tap(tab);
      await press(onScreen(page, hand), times, inVain);
    },
    async choose(group, name) {
      await tap(group.getByRole('radio', { name, exact: true }));
    },
    async write(field, text) {
      await tap(field);
      await field.fill(text);
    },
    async seconds(count) {
      await clock();
      // Many taps of the same button; each is the button's own press.
      await asked(page)
        .getByRole('button', { name: 'One second', exact: true })
        .evaluate((step: HTMLElement, times) => {
          for (let n = 0; n < times; n++) step.click();
        }, count);
      await tap(button(page, 'Not now'));
    },
  };
}
