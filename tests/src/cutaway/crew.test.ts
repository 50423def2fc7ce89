// The crew in the picture: as many as are on the site, each where the work is, hands within an arm's reach.
import { describe, expect, it } from 'vitest';
import { act, ACTION_SPECS, createRun, step, type Run } from '$sim';
import { lessonById, scenarioOf } from '$lessons';
import { compose, shownDepth_m } from '../../../src/cutaway/composition';
import { ARM, bonesOf, heightOf_px, stanceOf } from '../../../src/cutaway/crewPlace';
import { placeOf } from '../../../src/cutaway/place';
import type { Post, Tool } from '../../../src/cutaway/shown';
import { cutawayView } from '../../../src/cutaway/view';
import { fixtureView } from '../../browser/cutaway/fixture';

const newRun = (): Run => createRun(scenarioOf(lessonById('first-rods')!, 7));
const posts = (run: Run): Post[] => cutawayView(run, 'blind').crew.workers.map((one) => one.post);

describe('the crew', () => {
  it('stands idle until there is something to do', () => {
    const run = newRun();
    expect(posts(run)).toEqual(Array<Post>(run.kit.crew).fill('idle'));
  });

  it('goes to the pump, the pit, the drive and the rope as the work asks', () => {
    const run = newRun();
    expect(act(run, 'prime', {}).kind).not.toBe('refused');
    expect(posts(run)[0]).toBe('pump');
    for (let i = 0; i < 600 && run.state.tasks.length > 0; i++) step(run);
    expect(act(run, 'stir', { time_s: 60 }).kind).not.toBe('refused');
    expect(cutawayView(run, 'blind').crew.workers[0]).toEqual({ post: 'suction', tool: 'pole' });
    for (let i = 0; i < 600 && run.state.tasks.length > 0; i++) step(run);
    act(run, 'setThrottle', { throttle_frac: 1 });
    step(run);
    act(run, 'setTurning', { on: true });
    act(run, 'setFeed', { feed_frac: 0.5 });
    expect(posts(run)).toEqual(['handle', 'winch']);
  });

  it('is one less while the helper is away, and that is told', () => {
    const run = newRun();
    run.state.faults.helperBack_tick = run.state.tick + 600;
    const { crew } = cutawayView(run, 'blind');
    expect([crew.workers.length, crew.away]).toEqual([run.kit.crew - 1, 1]);
  });

  it('never shows more people than there are, whatever is under way', () => {
    for (const action of Object.keys(ACTION_SPECS) as (keyof typeof ACTION_SPECS)[]) {
      const run = newRun();
      run.state.tasks.push({ action, hands: 2, endTick: 1e6, data: {}, word: '' });
      expect(cutawayView(run, 'blind').crew.workers, action).toHaveLength(run.kit.crew);
    }
  });
});

describe('where they stand', () => {
  const POSTS: readonly (readonly [Post, Tool])[] = [
    ['handle', 'none'],
    ['winch', 'none'],
    ['mouth', 'none'],
    ['mouthBeyond', 'none'],
    ['mouth', 'bucket'],
    ['pump', 'none'],
    ['settling', 'shovel'],
    ['suction', 'bucket'],
    ['stick', 'none'],
    ['strainer', 'none'],
    ['channel', 'sieve'],
    ['bank', 'funnel'],
    ['idle', 'none'],
  ];
  const SIZES = [
    [320, 200, 11.5],
    [390, 332, 11.5],
    [742, 576, 12.8],
  ] as const;

  it.each(SIZES)('%i x %i: on the picture, left of the log, with hands that do not leave the arms', (w, h, text_px) => {
    for (const depth_m of [0.4, 4, 8.35, 20]) {
      const view = fixtureView({ depth_m });
      const page = compose({
        width_px: w,
        height_px: h,
        text_px,
        shown_m: shownDepth_m(depth_m),
        above_m: 1.6,
        bit_m: 0.1,
        suctionLength_m: 0.775,
        settlingLength_m: 0.775,
        pitDepth_m: 0.8,
        widening: null,
      });
      const place = placeOf(page, { zoom: 1, panX_px: 0, panY_px: 0 });
      const tall = heightOf_px(place);
      expect(tall).toBeLessThan(page.ground_y);
      for (const [post, tool] of POSTS) {
        const stance = stanceOf(view, place, view.stem.bit_m, { post, tool }, 0);
        const { shoulder } = bonesOf(stance, page.ground_y, tall);
        const about = `${post} at ${depth_m} m`;
        expect(stance.x - 0.12 * tall, about).toBeGreaterThan(-2);
        expect(stance.x + 0.12 * tall, about).toBeLessThan(page.log_x);
        for (const i of [0, 2] as const) {
          const dx = stance.hands[i]! - shoulder[0];
          const dy = stance.hands[i + 1]! - shoulder[1];
          expect(Math.sqrt(dx * dx + dy * dy) / tall, about).toBeLessThan(ARM);
        }
      }
    }
  });
});
