// A stem let down into a hole, and the hands on it, for the tests of what is held.
import { createRun } from '$sim';
import { lessonById, scenarioOf } from '$lessons';
import { Session } from '../../../src/app/session.svelte';
import { Desk } from '../../../src/hands/desk.svelte';
import type { AmountsHand, Press, StepperHand } from '../../../src/hands/hand';
import { pumpHands } from '../../../src/hands/pump';
import { stemHands } from '../../../src/hands/stem';

export const lesson = lessonById('first-rods')!;

/** A stem let down to 2 m in a hole that is there already, the pump primed. */
export function atTheHole() {
  let saves = 0;
  const run = createRun(scenarioOf(lesson, 7));
  run.state.stem.rods = 2;
  run.state.stem.bit_m = 2;
  run.state.hole.depth_m = Math.max(run.state.hole.depth_m, 2);
  run.state.pump.primed = true;
  const session = new Session({
    lesson,
    run,
    save: () => saves++,
    frames: { request: () => 1, cancel: () => undefined },
    now_ms: () => 0,
  });
  const desk = new Desk(session);
  const stem = <Form>(id: string): Form =>
    stemHands(desk, session.senses, true).find((hand) => hand.id === id) as unknown as Form;
  const amounts = (way: 'lift' | 'lower'): readonly Press[] => stem<AmountsHand>(way).amounts;
  const throttle = (): StepperHand =>
    pumpHands(desk, session.senses).find(({ id }) => id === 'throttle') as unknown as StepperHand;
  const seconds = (count: number): void => {
    for (let i = 0; i < count; i++) session.stepOnce();
  };
  return { session, desk, hold: desk.hold, stem, amounts, throttle, seconds, saves: () => saves };
}

export const acts = (session: Session, name: string): number =>
  session.run.log.filter(([, action]) => action === name).length;
