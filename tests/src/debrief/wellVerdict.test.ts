// The verdict on a well in sentences: every finding has words, and stands as the figures say.
import { describe, expect, it } from 'vitest';
import { LONGEST_d, type Verdict } from '$sim';
import { daysWords, wellFindings } from '../../../src/screens/debrief/wellVerdict';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

const GOOD: Verdict = {
  yield: { now_Lmin: 40, dry_Lmin: 22, whole_Lmin: 24, share_frac: 0.92, limitedBy: 'ground' },
  static_m: 3,
  dryStatic_m: 5,
  drawdown_m: 1,
  lifts: [
    { lift: 'suction', reaches: true, flow_Lmin: 17 },
    { lift: 'submersible', reaches: false, flow_Lmin: 0 },
  ],
  fitted: 'suction',
  fittedWorks: true,
  sand_mgL: 0.4,
  turbidity_NTU: 1,
  leak: {
    annulus_d: 9000,
    ground_d: 60,
    latrine_d: 120,
    latrine_m: 45,
    latrineRisk: 'veryLow',
    safe_m: 30,
    sealFrom_m: 0.5,
    sealTo_m: 3.6,
    sealedLength_m: 3.1,
    minGap_mm: 18,
  },
  casing: { collapse_ratio: 6, section_frac: 0.6, snapped: false, depth_m: 18.4 },
  screen: { from_m: 13, to_m: 17, openShare_frac: 0.05, inAquifer_frac: 1, belowLowest_frac: 1, entrance_ms: 0.01 },
  water: { salt_gL: 0.4, class: 'fresh', meter_uScm: 600, laboratoryNeeded: true },
  disinfection: { done: true, ct_mgminL: 40000, enough: true, left_mgL: 0 },
  headWorks: { apron_m: 1.5, drain_m: 4, cap: true, stickUp_m: 0.5, aboveFlood: true },
  people: { served: 300, asked: 200 },
  test: null,
  neighbourFall_m: 0,
  hours_h: 30,
  cost_marks: 280,
};

const standings = (verdict: Verdict): Record<string, string> =>
  Object.fromEntries(wellFindings(verdict).map(({ id, standing }) => [id, standing]));

describe('the findings', () => {
  it('all stand good for a good well, each with a heading and sentences without open slots', () => {
    for (const { id, standing, sentences } of wellFindings(GOOD)) {
      expect([id, standing]).toEqual([id, 'good']);
      expect(hasMessage(`well.finding.${id}`), id).toBe(true);
      for (const sentence of sentences) expect(sentence).not.toMatch(/[{}]|^(well|work|record)\./);
    }
  });

  it.each<[string, Partial<Verdict>, string]>([
    ['yield', { yield: { ...GOOD.yield, share_frac: 0.4 } }, 'bad'],
    ['yield', { yield: { ...GOOD.yield, dry_Lmin: 6 } }, 'mind'],
    ['lift', { fittedWorks: false }, 'bad'],
    ['lift', { fitted: null }, 'bad'],
    ['sand', { sand_mgL: 20 }, 'mind'],
    ['sand', { sand_mgL: 80 }, 'bad'],
    ['sand', { turbidity_NTU: 60 }, 'bad'],
    ['seal', { leak: { ...GOOD.leak, annulus_d: 0.1 } }, 'bad'],
    ['seal', { leak: { ...GOOD.leak, annulus_d: 400 } }, 'mind'],
    ['latrine', { leak: { ...GOOD.leak, latrineRisk: 'significant' } }, 'bad'],
    ['latrine', { leak: { ...GOOD.leak, latrine_m: 20 } }, 'mind'],
    ['casing', { casing: { ...GOOD.casing, snapped: true } }, 'bad'],
    ['casing', { screen: { ...GOOD.screen, inAquifer_frac: 0 } }, 'bad'],
    ['clean', { disinfection: { ...GOOD.disinfection, done: false } }, 'bad'],
    ['clean', { water: { ...GOOD.water, class: 'brackish', salt_gL: 2 } }, 'mind'],
    ['head', { headWorks: { ...GOOD.headWorks, cap: false } }, 'bad'],
    ['head', { headWorks: { ...GOOD.headWorks, apron_m: 0 } }, 'mind'],
  ])('%s of %j stands %s, and nothing else changes', (id, change, standing) => {
    const found = standings({ ...GOOD, ...change });
    expect(found[id]).toBe(standing);
    for (const [other, as] of Object.entries(found)) if (other !== id) expect([other, as]).toEqual([other, 'good']);
  });

  it('says which way is the quicker, the casing or the ground', () => {
    const seal = (annulus_d: number) =>
      wellFindings({ ...GOOD, leak: { ...GOOD.leak, annulus_d } })
        .find(({ id }) => id === 'seal')!
        .sentences.join(' ');
    expect(seal(9000)).toContain('The ground is the quicker way');
    expect(seal(1)).toContain('The casing is the quicker way');
  });
});

it.each([
  [0.01, 'less than an hour'],
  [0.05, '1 hour'],
  [1.9, '46 hours'],
  [2, '2 days'],
  [400, '400 days'],
  [3650, '10 years'],
  [LONGEST_d, 'more than 100 years'],
])('%s days are %s', (days, words) => expect(daysWords(days)).toBe(words));
