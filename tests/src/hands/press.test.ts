// Where a press ends and a hold begins, by finger and by key.
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ButtonHand, StepperHand } from '../../../src/hands/hand';
import { HOLD_ms, STEADY_ms } from '../../../src/hands/hold.svelte';
import { keyPress } from '../../../src/hands/keyPress';
import { pumpHands } from '../../../src/hands/pump';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { acts, atTheHole } from './atTheHole';

beforeAll(() => addMessages(laterMessages));
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a press that a finger or a key keeps down', () => {
  it('is a tap while it is short, and a hold from then on', () => {
    const { hold, amounts } = atTheHole();
    const short = hold.press(amounts('lift')[0]!.hold!);
    vi.advanceTimersByTime(HOLD_ms - 1);
    expect(short()).toBe(false);
    vi.advanceTimersByTime(HOLD_ms);
    expect(hold.held).toBeNull();
    const long = hold.press(amounts('lift')[0]!.hold!);
    vi.advanceTimersByTime(HOLD_ms);
    expect(hold.held?.hand).toBe('lift');
    expect(long()).toBe(true);
    expect(hold.held).toBeNull();
  });

  it('stays on where the lock closed meanwhile', () => {
    const { hold, amounts } = atTheHole();
    const end = hold.press(amounts('lift')[0]!.hold!);
    vi.advanceTimersByTime(HOLD_ms);
    hold.lock('lift', 'work.lift');
    expect(end()).toBe(true);
    expect(hold.held?.hand).toBe('lift');
  });

  it('by key: the tap is done at once, and held it goes on until the key comes up', () => {
    const { hold, throttle, session } = atTheHole();
    const up = keyPress(throttle().more, false, hold)!;
    expect(session.senses.pump.throttle_frac).toBe(0.25);
    vi.advanceTimersByTime(HOLD_ms);
    expect(session.senses.pump.throttle_frac).toBe(0.5);
    up();
    vi.advanceTimersByTime(10 * STEADY_ms);
    expect(session.senses.pump.throttle_frac).toBe(0.5);
  });

  it('by key: a lift goes on after its tap without a refusal', () => {
    const { hold, desk, amounts, seconds, session } = atTheHole();
    const up = keyPress(amounts('lift')[0]!, false, hold)!;
    expect(acts(session, 'lift')).toBe(1);
    seconds(1);
    vi.advanceTimersByTime(HOLD_ms);
    expect([hold.held?.hand, desk.refused]).toEqual(['lift', null]);
    seconds(3);
    expect(acts(session, 'lift')).toBe(2);
    up();
    expect(hold.held).toBeNull();
  });

  it('by key: a question opens when a short press ends, and not after a hold', () => {
    const { hold, desk, stem } = atTheHole();
    const work = stem<ButtonHand>('workStem');
    const short = keyPress(work, true, hold)!;
    expect(desk.panel).toBeNull();
    short();
    expect(desk.panel).toBe('workStem');
    desk.close();
    const long = keyPress(work, true, hold)!;
    vi.advanceTimersByTime(HOLD_ms);
    expect(hold.held?.id).toBe('workStem');
    long();
    expect([hold.held, desk.panel]).toEqual([null, null]);
  });

  it('by key: what cannot be done says why once', () => {
    const { hold, desk, session } = atTheHole();
    session.run.state.pump.primed = false;
    const [, , more] = pumpHands(desk, session.senses) as unknown as [unknown, unknown, StepperHand];
    keyPress(more.more, false, hold);
    vi.advanceTimersByTime(3 * HOLD_ms);
    expect(desk.refused?.why.key).toBe('refusal.pumpDry');
    expect(session.run.record.events.filter(({ name }) => name === 'refused')).toHaveLength(1);
  });
});
