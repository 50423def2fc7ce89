// The hands from the hole to the well, in the order of the work: well (plan, rods, casing), pack and seal, water, finish.
import type { Senses } from '$sim';
import type { KeyedMessage } from '../words';
import { ASKS } from './asks';
import type { Desk } from './desk.svelte';
import type { Hand, HandGroup, HandSet } from './hand';

type Well = NonNullable<Senses['well']>;
type AskHand = 'pullOut' | 'runCasing' | 'workCasing' | 'pourPack' | 'placeSeal' | 'backfill' | 'develop';
type AskHandToo = 'breakPolymer' | 'yieldTest' | 'disinfect' | 'headWorks' | 'handOver' | 'stopDrilling';

/** A hand that opens its question. */
function asking(desk: Desk, id: AskHand | AskHandToo, detail: KeyedMessage): Hand {
  return {
    form: 'button',
    id,
    drawing: id,
    label: `work.${id}`,
    narrow: true,
    detail,
    whyNot: desk.whyNotAsk(ASKS[id]),
    asks: true,
    press: () => desk.open(id),
    shortcut: id,
  };
}

/** A hand that is done at once when it is pressed. */
function doing(desk: Desk, id: 'joinCasing' | 'sound' | 'dipWell', detail: KeyedMessage): Hand {
  return {
    form: 'button',
    id,
    drawing: id,
    label: `work.${id}`,
    narrow: true,
    detail,
    whyNot: desk.whyNot(id),
    press: () => desk.act(id, id),
    shortcut: id,
  };
}

function planning(desk: Desk, { plan }: Well): Hand {
  return {
    form: 'button',
    id: 'planWell',
    drawing: 'planWell',
    label: 'work.planWell',
    narrow: true,
    detail: plan
      ? { key: 'work.planWell.done', data: { from_m: plan.screenFrom_m, to_m: plan.screenTo_m } }
      : { key: 'work.planWell.none' },
    whyNot: null,
    asks: true,
    press: () => desk.open('planWell'),
    shortcut: 'planWell',
  };
}

function joining(desk: Desk, { plan, casing }: Well): Hand {
  const data = { joined: casing.joined, pieces: casing.pieces };
  return doing(desk, 'joinCasing', plan ? { key: 'work.joinCasing.now', data } : { key: 'work.joinCasing.none' });
}

function casingHands(desk: Desk, well: Well): Hand[] {
  const { casing } = well;
  const hands = [
    joining(desk, well),
    asking(
      desk,
      'runCasing',
      casing.shoe_m > 0
        ? { key: 'work.runCasing.down', data: { shoe_m: casing.shoe_m } }
        : casing.joined > 0
          ? { key: 'work.runCasing.now', data: { length_m: casing.length_m } }
          : { key: 'work.runCasing.none' },
    ),
    asking(desk, 'workCasing', { key: casing.look === 'hung' ? 'work.workCasing.hung' : 'work.workCasing.say' }),
  ];
  return casing.look === 'set' ? [] : hands;
}

const PACK = /^pack/;

function annulusHands(desk: Desk, { poured, sounded, seals }: Well): Hand[] {
  const pack_L = poured.reduce((sum, one) => sum + (PACK.test(one.fill) ? one.volume_L : 0), 0);
  const seal_L = seals.reduce((sum, one) => sum + one.volume_L, 0);
  return [
    asking(
      desk,
      'pourPack',
      pack_L > 0 ? { key: 'work.pourPack.now', data: { volume_L: pack_L } } : { key: 'work.pourPack.none' },
    ),
    doing(
      desk,
      'sound',
      sounded ? { key: 'work.sound.last', data: { top_m: sounded.top_m } } : { key: 'work.sound.none' },
    ),
    asking(
      desk,
      'placeSeal',
      seal_L > 0 ? { key: 'work.placeSeal.now', data: { volume_L: seal_L } } : { key: 'work.placeSeal.none' },
    ),
    asking(desk, 'backfill', { key: 'work.backfill.say' }),
  ];
}

/** The readings of the test so far, to look at. */
function plot(desk: Desk, readings: number): Hand {
  return {
    form: 'button',
    id: 'testPlot',
    drawing: 'testPlot',
    label: 'work.testPlot',
    narrow: true,
    detail: { key: 'work.testPlot.now', data: { n: readings } },
    whyNot: null,
    asks: true,
    press: () => desk.open('testPlot'),
    shortcut: 'testPlot',
  };
}

function waterHands(desk: Desk, { dip, test }: Well): Hand[] {
  const hands = [
    asking(desk, 'develop', { key: 'work.develop.say' }),
    asking(desk, 'breakPolymer', { key: 'work.breakPolymer.say' }),
    doing(
      desk,
      'dipWell',
      dip ? { key: 'work.dipWell.last', data: { level_m: dip.level_m } } : { key: 'work.dipWell.none' },
    ),
    asking(desk, 'yieldTest', { key: test ? 'work.yieldTest.done' : 'work.yieldTest.none' }),
  ];
  return test ? [...hands, plot(desk, test.rows.length)] : hands;
}

function finishHands(desk: Desk, { smellsOfChlorine, headWorks }: Well): Hand[] {
  return [
    asking(desk, 'disinfect', { key: smellsOfChlorine ? 'work.disinfect.smells' : 'work.disinfect.none' }),
    asking(desk, 'headWorks', { key: headWorks ? 'work.headWorks.done' : 'work.headWorks.none' }),
    {
      form: 'button',
      id: 'record',
      drawing: 'record',
      label: 'work.record',
      narrow: true,
      detail: { key: 'work.record.now', data: { n: Object.keys(desk.session.run.state.recordFields ?? {}).length } },
      whyNot: desk.whyNot('record', { field: 'remarks', text: ' ' }),
      asks: true,
      press: () => desk.open('record'),
      shortcut: 'record',
    },
    asking(desk, 'handOver', { key: 'work.handOver.say' }),
  ];
}

export type WellPhase = 'drilling' | 'pulling' | 'open' | 'closed';

/** How far the work is: drilling; rods being drawn; the open hole with its casing; the well closed round its casing. */
export function wellPhase({ session: { run, senses } }: Pick<Desk, 'session'>): WellPhase {
  const { job, stem } = run.state.machine;
  if (!senses.well || job === 'siteSetup' || job === 'drilling') return 'drilling';
  if (senses.well.casing.look === 'set') return 'closed';
  return stem === 'out' ? 'open' : 'pulling';
}

/** The group that the work has come to: what stands in it is done next, unless the crew wants it otherwise. */
export function groupAt({ casing, poured, seals }: Well): HandGroup {
  if (casing.look !== 'landed' && casing.look !== 'set') return 'well';
  if (seals.length === 0) return 'annulus';
  return seals.every((seal) => seal.set) && poured.length > 0 ? 'water' : 'annulus';
}

/** The group of the well while the drill is still at work: the plan may be made, casing joined, drilling stopped. */
export function drillingWellHands(desk: Desk, well: Well): Hand[] {
  return [
    planning(desk, well),
    joining(desk, well),
    asking(desk, 'stopDrilling', { key: 'work.stopDrilling.sayWell' }),
    ...leaving(desk),
  ];
}

/** The rest may be left to a crew, once the lesson's own decision has been made. */
function leaving(desk: Desk): Hand[] {
  if (!desk.session.lesson.leaves) return [];
  return [
    {
      form: 'button',
      id: 'leaveToCrew',
      drawing: 'handOver',
      label: 'work.leaveToCrew',
      narrow: true,
      detail: { key: desk.session.run.state.leaving === 'offered' ? 'work.leaveToCrew.now' : 'work.leaveToCrew.later' },
      whyNot: desk.whyNot('leaveToCrew'),
      press: () => desk.act('leaveToCrew', 'leaveToCrew'),
    },
  ];
}

/** The groups of the well once drilling is stopped, in the order of the work. */
export function wellSets(desk: Desk, well: Well, phase: WellPhase): HandSet[] {
  const { rods } = desk.session.senses.stem;
  const pull = asking(desk, 'pullOut', { key: 'work.pullOut.now', data: { n: rods } });
  if (phase === 'pulling')
    return [{ group: 'well', hands: [pull, planning(desk, well), joining(desk, well), ...leaving(desk)] }];
  return [
    { group: 'well', hands: [planning(desk, well), ...casingHands(desk, well), ...leaving(desk)] },
    { group: 'annulus', hands: [...annulusHands(desk, well), ...leaving(desk)] },
    { group: 'water', hands: [...waterHands(desk, well), ...leaving(desk)] },
    { group: 'finish', hands: [...finishHands(desk, well), ...leaving(desk)] },
  ];
}
