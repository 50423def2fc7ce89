// Plays a log on the work screen: brings the clock to the second of each act, then does it by the hands.
import { expect, type Locator } from '@playwright/test';
import type { Payload } from '../../../sim';
import { jobTime } from '../work';
import { setAmount } from './amount';
import type { HandAct, HandLog } from './handLog';
import { asked, inQuestion, type Hand, type Hands } from './hands';
import { waits } from './papers';
import { WAYS, type Answer, type Way } from './ways';

/** From here on the time is waited for, s: the clock offers five minutes at every stage. */
const LONG_s = 300;

/** Lets the time pass up to a second; a wait may end early, with something that happened. */
async function bringTo(hands: Hands, tick: number): Promise<void> {
  for (let now_s = await jobTime(hands.page); now_s < tick; now_s = await jobTime(hands.page)) {
    if (tick - now_s >= LONG_s) await waits(hands, '5 minutes');
    else await hands.seconds(tick - now_s);
  }
  expect(await jobTime(hands.page), 'the clock is not past the act').toBe(tick);
}

async function answer(hands: Hands, one: Answer, value: Payload[string]): Promise<void> {
  const question = asked(hands.page);
  if ('write' in one) await hands.write(question.getByRole('textbox', { name: one.write, exact: true }), String(value));
  else if ('amount' in one) {
    const field = question.getByRole('group', { name: one.amount, exact: true });
    await setAmount(hands, field, Number(value) * (one.shown ?? 1));
  } else {
    const group = question.getByRole('group', { name: one.choose, exact: true });
    // Where there is but one to choose from, nothing is asked.
    if ((await group.count()) > 0) await hands.choose(group, one.words[String(value)]!);
  }
}

/** A share as it is written at the stepper. */
async function shareAt(stepper: Locator): Promise<number> {
  return Number(/(\d+)%/.exec(await stepper.innerText())![1]) / 100;
}

async function stepTo(hands: Hands, way: Extract<Way, { stepper: string }>, wanted: number): Promise<void> {
  if (wanted === 0 && way.off) return hands.hand(way.off);
  const stepper = hands.page.getByRole('group', { name: way.stepper, exact: true });
  // Its tab must lie open for it to be read.
  await hands.hand(way.more, 0);
  const steps = Math.round((wanted - (await shareAt(stepper))) * way.steps);
  await hands.hand(steps < 0 ? way.less : way.more, Math.abs(steps));
  await expect(stepper).toContainText(`${Math.round(wanted * 100)}%`);
}

async function press(hands: Hands, hand: Hand, way: Extract<Way, { hand: Hand }>, act: HandAct): Promise<void> {
  const { page } = hands;
  const { payload, refused } = act;
  await hands.hand(hand, 1, refused);
  if (way.confirm === undefined) return;
  for (const one of way.answers ?? []) {
    const value = payload[one.field];
    if (value !== undefined) await answer(hands, one, value);
  }
  await hands.press(inQuestion(page, way.confirm), 1, refused);
  if (refused) await hands.press(inQuestion(page, 'Not now'));
  await expect(asked(page)).toHaveCount(0);
}

async function doAct(hands: Hands, act: HandAct): Promise<void> {
  const { action, payload } = act;
  const way = WAYS[action];
  if ('noHand' in way) throw new Error(`${action} has no hand: ${way.noHand}`);
  if ('paper' in way) await way.paper(hands, payload);
  else if ('toggle' in way) await hands.hand(way.toggle);
  else if ('stepper' in way) await stepTo(hands, way, Number(payload[way.field]));
  else await press(hands, way.hand, way, act);
}

/** Plays a whole log; `seen` is called after each act. */
export async function playLog(hands: Hands, log: HandLog, seen?: (act: HandAct) => Promise<void>): Promise<void> {
  for (const act of log.acts) {
    await bringTo(hands, act.tick);
    await doAct(hands, act);
    await seen?.(act);
  }
}
