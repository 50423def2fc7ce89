// What can go wrong in an exercise, and what is on hand: each kind at each sort of moment, in every lesson.
import { describe, expect, test } from 'vitest';
import { lessonOfExercise, LESSON_ORDER, type Exercise } from '../../../../lessons/index';
import {
  addFault,
  AFTER_EVENTS,
  afterKey,
  FAULT_IDS,
  faultsFull,
  figuresOf,
  linesOf,
  removeFault,
  setEvent,
  setWhen,
  WHENS,
  whenOf,
} from '../../../../src/classroom/editor/faults';
import { STOCKS, withBudget } from '../../../../src/classroom/editor/kit';
import { editor } from '../../../../src/words/en/editor';
import { events } from '../../../../src/words/en/events';
import { fresh, full, wrongFields } from './made';

describe('what goes wrong', () => {
  test.each(LESSON_ORDER)('in %s can be each kind, at each sort of moment', (lesson) => {
    for (const id of FAULT_IDS) {
      const one = addFault({ ...fresh(lesson), faults: [] }, id);
      expect(wrongFields(one)).toEqual([]);
      expect(whenOf(one.faults[0]!)).toBe('depth');
      if (id === 'cobbles' || id === 'saltyLayer') continue;
      for (const when of WHENS) {
        const moved = setWhen(one, 0, when);
        expect(wrongFields(moved)).toEqual([]);
        expect(whenOf(moved.faults[0]!)).toBe(when);
      }
      for (const event of AFTER_EVENTS) expect(wrongFields(setEvent(setWhen(one, 0, 'event'), 0, event))).toEqual([]);
    }
  });

  test('has words for each moment it may come after, also for those that are not offered', () => {
    for (const event of AFTER_EVENTS) expect(Object.keys(editor)).toContain(afterKey(event));
    expect(Object.keys(events)).toContain(afterKey('pumpWorn'));
  });

  test('has words for each of its figures', () => {
    for (const id of FAULT_IDS)
      for (const { name } of figuresOf(id)) expect(Object.keys(editor)).toContain(`editor.fault.figure.${id}.${name}`);
  });

  test('is drawn on the line it belongs to', () => {
    const lines = linesOf(full);
    expect(lines.depth.marks).toEqual([
      { index: 0, from: 4, to: 6 },
      { index: 3, from: 9, to: 9 },
    ]);
    expect(lines.depth.most).toBe(15);
    expect(lines.time.marks).toEqual([{ index: 1, from: 600, to: 1200 }]);
    expect(lines.after).toEqual([2]);
  });

  test('is twelve at most, and goes again', () => {
    let many = fresh();
    for (let i = 0; i < 12; i++) many = addFault(many, 'pumpStops');
    expect(faultsFull(many)).toBe(true);
    expect(wrongFields(many)).toEqual([]);
    expect(removeFault(many, 3).faults).toHaveLength(11);
  });
});

describe('kit and budget', () => {
  test('what the lesson has is what the opening has', () => {
    const base = lessonOfExercise(fresh('open-well'));
    expect(STOCKS.map(({ name, usual }) => [name, usual(base)])).toEqual([
      ['water_L', 8000],
      ['powder_kg', 8],
      ['petrol_L', 30],
      ['bentonite_kg', 50],
      ['clay_kg', 0],
      ['chlorine_kg', 3],
      ['pit_L', 940],
      ['pumpWorn_frac', 0],
    ]);
  });

  test('a budget that goes takes its points along', () => {
    const cost = withBudget(fresh(), true, false);
    expect(wrongFields(cost)).toEqual([]);
    const judged: Exercise = { ...cost, weights: { ...cost.weights, jobTime: 0, withinBudget: 6 } };
    expect(wrongFields(judged)).toEqual([]);
    const without = withBudget(judged, false, false);
    expect(without.budget_marks).toBeUndefined();
    expect(wrongFields(without)).toEqual(['weights']);
  });
});
