// What axe finds wrong on a page. Colours are looked at in every theme; all else is the same in each, so one theme is enough for it.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

export const THEMES = ['Paper', 'Night', 'Sun or projector'] as const;
export type Theme = (typeof THEMES)[number];

/** The theme in which every rule is tried. */
const WHOLE: Theme = 'Paper';
/** Text at 4.5:1 and at 7:1: the rules that a theme can break. */
const COLOURS = ['color-contrast', 'color-contrast-enhanced'];

/** Why a long look with axe is taken in one browser: it reads the tree and the styles, and they are the same in each. */
export const ONE_IS_ENOUGH = 'roles, names and colours are the same in every browser';

/** One line a fault: the rule and where. */
export async function faults(page: Page, theme: Theme = WHOLE): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  if (theme === WHOLE) axe.options({ rules: { 'color-contrast-enhanced': { enabled: true } } });
  else axe.withRules(COLOURS);
  const found = await axe.analyze();
  return found.violations.map((fault) => `${fault.id}: ${fault.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}
