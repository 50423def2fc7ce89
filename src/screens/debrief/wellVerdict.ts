// The verdict on a well in plain sentences, by what people ask of a well: water, a pump that lifts it, sand, dirt, a pipe that holds.
import { LONGEST_d, type Verdict } from '$sim';
import { say, t } from '../../words';

/** good: nothing to do; mind: it works, but not as well as it could; bad: it harms the well or its users. */
export type Standing = 'good' | 'mind' | 'bad';

export interface Finding {
  readonly id: string;
  readonly standing: Standing;
  readonly sentences: readonly string[];
}

/** A time under way in words: hours, days, years; beyond a hundred years that alone is said. */
export function daysWords(time_d: number): string {
  if (time_d >= LONGEST_d) return t('well.days.longest');
  const hours = Math.round(time_d * 24);
  if (hours < 1) return t('well.days.least');
  if (hours < 48) return t('well.days.hours', { n: hours });
  if (time_d < 730) return t('well.days.days', { n: Math.round(time_d) });
  return t('well.days.years', { n: Math.round(time_d / 365) });
}

/** Bands of the lesson's rubric: sand 5 and 50 mg/L, cloudiness 5 and 50 NTU, leak 10 years and 50 days. */
const band = (value: number, good: number, bad: number): Standing =>
  (good < bad ? value <= good : value >= good) ? 'good' : (good < bad ? value <= bad : value >= bad) ? 'mind' : 'bad';
const worst = (...all: readonly Standing[]): Standing =>
  all.includes('bad') ? 'bad' : all.includes('mind') ? 'mind' : 'good';

function yieldOf({ yield: water, people }: Verdict): Finding {
  const sentences = [
    t('well.yield.now', { now: water.now_Lmin, dry: water.dry_Lmin }),
    t(`well.yield.limit.${water.limitedBy}`),
    t('well.yield.share', { share: water.share_frac }),
    t('well.people', { served: people.served, asked: people.asked }),
  ];
  return { id: 'yield', standing: worst(band(water.share_frac, 0.85, 0.5), band(water.dry_Lmin, 12, 3)), sentences };
}

function liftOf({ lifts, fitted, fittedWorks }: Verdict): Finding {
  const each = lifts.map(({ lift, reaches, flow_Lmin }) =>
    t(reaches ? 'well.lift.reaches' : 'well.lift.short', { lift: `work.lift.${lift}`, flow: flow_Lmin }),
  );
  const own =
    fitted === null
      ? t('well.lift.none')
      : t(fittedWorks ? 'well.lift.works' : 'well.lift.fails', { lift: `work.lift.${fitted}` });
  return { id: 'lift', standing: fitted !== null && fittedWorks ? 'good' : 'bad', sentences: [own, ...each] };
}

const sandOf = ({ sand_mgL, turbidity_NTU }: Verdict): Finding => ({
  id: 'sand',
  standing: worst(band(sand_mgL, 5, 50), band(turbidity_NTU, 5, 50)),
  sentences: [t('well.sand', { sand: sand_mgL }), t('well.turbidity', { turbidity: turbidity_NTU })],
});

function sealOf({ leak }: Verdict): Finding {
  const { annulus_d, ground_d, sealFrom_m, sealTo_m, sealedLength_m, minGap_mm } = leak;
  return {
    id: 'seal',
    standing: band(annulus_d, 3650, 50),
    sentences: [
      sealedLength_m > 0
        ? t('well.seal.lies', { from: sealFrom_m, to: sealTo_m, length: sealedLength_m, gap: minGap_mm })
        : t('well.seal.none'),
      t(annulus_d < ground_d ? 'well.seal.casingFirst' : 'well.seal.groundFirst'),
    ],
  };
}

const latrineOf = ({ leak }: Verdict): Finding => ({
  id: 'latrine',
  standing: leak.latrineRisk === 'significant' ? 'bad' : leak.latrine_m < leak.safe_m ? 'mind' : 'good',
  sentences: [
    t('well.latrine', { distance: leak.latrine_m, time: daysWords(leak.latrine_d) }),
    t('well.latrine.safe', { safe: leak.safe_m }),
    t(`well.latrine.${leak.latrineRisk}`),
  ],
});

function casingOf({ casing, screen }: Verdict): Finding {
  const sentences = [
    t('well.casing.depth', { depth: casing.depth_m }),
    t('well.screen', {
      from: screen.from_m,
      to: screen.to_m,
      ground: screen.inAquifer_frac,
      wet: screen.belowLowest_frac,
    }),
    t('well.screen.speed', { speed: screen.entrance_ms * 100 }),
    t('well.casing.section', { section: casing.section_frac, collapse: casing.collapse_ratio }),
  ];
  if (casing.snapped) sentences.unshift(t('well.casing.snapped'));
  const place = worst(band(screen.inAquifer_frac, 0.9, 0.4), band(screen.belowLowest_frac, 0.99, 0.5));
  const strength = band(casing.collapse_ratio, 2, 1);
  return { id: 'casing', standing: casing.snapped ? 'bad' : worst(place, strength), sentences };
}

function cleanOf({ disinfection, water }: Verdict): Finding {
  const sentences = [
    t(!disinfection.done ? 'well.clean.none' : disinfection.enough ? 'well.clean.enough' : 'well.clean.short'),
    say(`well.salt.${water.class}`, { salt: water.salt_gL }),
    t('record.caution.lab'),
  ];
  if (disinfection.left_mgL > 1) sentences.splice(1, 0, t('well.clean.left', { left: disinfection.left_mgL }));
  const salt: Standing = water.class === 'fresh' ? 'good' : water.class === 'brackish' ? 'mind' : 'bad';
  return { id: 'clean', standing: worst(disinfection.done && disinfection.enough ? 'good' : 'bad', salt), sentences };
}

function headOf({ headWorks }: Verdict): Finding {
  const { apron_m, drain_m, cap, stickUp_m, aboveFlood } = headWorks;
  return {
    id: 'head',
    standing: worst(cap && aboveFlood ? 'good' : 'bad', apron_m >= 1 && drain_m >= 3 ? 'good' : 'mind'),
    sentences: [
      t('well.head', { apron: apron_m, drain: drain_m, stickUp: stickUp_m }),
      t(cap ? 'well.head.cap' : 'well.head.noCap'),
      t(aboveFlood ? 'well.head.dry' : 'well.head.flooded'),
    ],
  };
}

/** The findings, those that people ask for first. */
export function wellFindings(verdict: Verdict): Finding[] {
  return [
    yieldOf(verdict),
    liftOf(verdict),
    sandOf(verdict),
    sealOf(verdict),
    latrineOf(verdict),
    casingOf(verdict),
    cleanOf(verdict),
    headOf(verdict),
  ];
}
