// Acts that have a paper of their own: the plan of the site, the board of the well, the driller's record; and the clock's waits.
import { expect, type Locator } from '@playwright/test';
import type { Payload, RecordField } from '../../../sim';
import { asked, inQuestion, type Hand, type Hands } from './hands';

const SITE: Hand = { tab: 'Pit', name: 'Site plan', key: '/' };
const PLAN: Hand = { tab: 'Well', name: 'Plan the well', key: '=' };
const RECORD: Hand = { tab: 'Finish', name: 'Record', key: 'o' };

/** The plan of the site lies open when the work begins. */
export async function chooseSite(hands: Hands, { spot }: Payload): Promise<void> {
  const paper = asked(hands.page);
  if (!(await paper.isVisible())) await hands.hand(SITE);
  await hands.press(paper.getByRole('button', { name: new RegExp(`^Spot ${spot},`) }));
  await hands.press(inQuestion(hands.page, `Dig at spot ${spot}`));
}

const CHOSEN = {
  casing: ['Pipe', { pvc50: '50 mm, wall 2.4 mm', pvc63: '63 mm, wall 3.0 mm', pvc110: '110 mm, wall 5.3 mm' }],
  cloth: [
    'Cloth sleeve',
    { none: 'none', fine: 'fine, 0.12 mm', medium: 'medium, 0.25 mm', coarse: 'coarse, 0.43 mm' },
  ],
  pack: ['Grain', { none: 'none', pack07: '0.7 to 1.2 mm', pack1: '1 to 2 mm', pack2: '2 to 4 mm' }],
  seal: ['Material', { none: 'none', cement: 'cement', bentoniteGranules: 'bentonite granules' }],
} as const satisfies Readonly<Record<string, readonly [string, Readonly<Record<string, string>>]>>;

/** The figures of the plan with the stride of their + and −. */
const FIGURES = [
  ['screenTo_m', 'Screen foot', 0.1],
  ['screenFrom_m', 'Screen top', 0.1],
  ['stickUp_m', 'Above ground', 0.1],
  ['sump_m', 'Sump', 0.1],
  ['centralisers', 'Centralisers', 1],
  ['slotRows', 'Slots side by side', 1],
  ['slotWidth_mm', 'Slot width', 0.1],
  ['slotArc_mm', 'Length of a slot', 5],
  ['slotSpacing_mm', 'From slot to slot', 1],
  ['packTop_m', 'Pack top', 0.1],
  ['sealFrom_m', 'Seal top', 0.1],
  ['sealTo_m', 'Seal foot', 0.1],
] as const;

async function stepTo(hands: Hands, field: Locator, name: string, wanted: number, stride: number): Promise<void> {
  const steps = Math.round((wanted - Number(await field.inputValue())) / stride);
  const press = inQuestion(hands.page, `${name}: ${steps < 0 ? 'less' : 'more'}`);
  if (steps !== 0) await hands.press(press, Math.abs(steps));
  await expect.poll(async () => Number(await field.inputValue())).toBeCloseTo(wanted, 6);
}

export async function planWell(hands: Hands, plan: Payload): Promise<void> {
  await hands.hand(PLAN);
  const board = asked(hands.page);
  for (const [field, [label, words]] of Object.entries(CHOSEN)) {
    const said = (words as Readonly<Record<string, string>>)[String(plan[field])];
    await board.getByRole('combobox', { name: label, exact: true }).selectOption({ label: said! });
  }
  const cap = board.getByRole('checkbox', { name: 'End cap' });
  if ((await cap.isChecked()) !== plan.cap) await hands.press(cap);
  for (const [field, name, stride] of FIGURES) {
    const figure = board.getByRole('textbox', { name, exact: false });
    // A pack or a seal that is not planned has no figures.
    if ((await figure.count()) > 0) await stepTo(hands, figure, name, Number(plan[field]), stride);
  }
  await hands.press(inQuestion(hands.page, 'Write it down'));
}

const RECORD_LABELS: Readonly<Record<RecordField, string>> = {
  well: 'Well, name or number',
  place: 'Place',
  coordinates: 'Coordinates',
  datum: 'Depths measured from, and its height',
  owner: 'Owner',
  driller: 'Driller and crew',
  use: 'Use',
  permit: 'Permit',
  siting: 'Distance to latrines, animals, flood, other wells',
  waterMet: 'Water met at, and how far it rose',
  drilling: 'Losses, caving, feel of the stem',
  waterLook: 'Water: look, smell, taste',
  laboratory: 'Laboratory sample and result',
  remarks: 'Remarks',
};

export async function writeRecord(hands: Hands, { field, text }: Payload): Promise<void> {
  await hands.hand(RECORD);
  const label = RECORD_LABELS[field as RecordField];
  await hands.write(asked(hands.page).getByRole('textbox', { name: label, exact: true }), String(text));
  await hands.press(inQuestion(hands.page, 'Write it in'));
}

const WAITS: Readonly<Record<string, string>> = {
  taskDone: 'Task done',
  set: 'Seals have set',
  morning: 'Morning',
  clear: 'Returns look clear',
  soaked: 'Powder soaked',
  recovered: 'Water has risen',
};

/** Waits for a thing, or for minutes that the clock offers. */
export async function waitFor(hands: Hands, { until, time_s }: Payload): Promise<void> {
  await waits(hands, until === undefined ? `${Number(time_s) / 60} minutes` : WAITS[String(until)]!);
}

export async function waits(hands: Hands, words: string): Promise<void> {
  const { page } = hands;
  await hands.clock();
  await hands.press(inQuestion(page, words));
  await expect(page.getByRole('button', { name: 'Stop waiting', exact: true })).toHaveCount(0, { timeout: 60_000 });
}
