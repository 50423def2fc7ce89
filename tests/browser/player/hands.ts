// Someone at the hole. How a control is pressed is the difference between taps and keys.
import type { Locator, Page } from '@playwright/test';

/** A hand on the screen, by what a person reads; without a key it is reached with Tab. */
export interface Hand {
  readonly tab: string;
  readonly name: string;
  readonly key?: string;
  /** Where a well is made it stands with the hands of the well. */
  readonly movesToWell?: true;
  /** Where it stands once its own group is gone. */
  readonly laterTab?: string;
}

export interface Hands {
  readonly page: Page;
  /** Presses a hand, so many times; in vain where it cannot be used and says why. */
  hand(hand: Hand, times?: number, inVain?: boolean): Promise<void>;
  /** Presses a button of an open question or paper, so many times. */
  press(button: Locator, times?: number, inVain?: boolean): Promise<void>;
  /** Chooses one of a few. */
  choose(group: Locator, name: string): Promise<void>;
  /** Writes into a field. */
  write(field: Locator, text: string): Promise<void>;
  /** Lets so many job seconds pass, one by one. */
  seconds(count: number): Promise<void>;
  /** Opens the clock. */
  clock(): Promise<void>;
}

/** The question or paper that is open. */
export const asked = (page: Page): Locator => page.getByRole('dialog');

export const inQuestion = (page: Page, name: string): Locator =>
  asked(page).getByRole('button', { name, exact: true }).first();

/** A hand as it stands on the screen now; leaving the rest to a crew stands in more than one group. */
export const onScreen = (page: Page, { name }: Hand): Locator =>
  page.getByRole('region', { name: 'Hands', exact: true }).getByRole('button', { name, exact: true }).first();
