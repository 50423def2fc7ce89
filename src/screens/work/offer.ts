// Which hands and senses a lesson offers, and the hands as they stand now.
import type { Lesson } from '$lessons';
import type { Desk } from '../../hands/desk.svelte';
import { fluidHands } from '../../hands/fluid';
import type { HandGroup, HandSet } from '../../hands/hand';
import { bookHands, trayHands } from '../../hands/paper';
import { mendPit, mendPump, mendStem } from '../../hands/mend';
import { pitHands } from '../../hands/pit';
import { pumpHands } from '../../hands/pump';
import { stemHands } from '../../hands/stem';
import { drillingWellHands, wellPhase, wellSets, type WellPhase } from '../../hands/well';
import type { Reading, SenseId } from '../../senses/readings';
import { WELL_SENSE_IDS } from '../../senses/wellReadings';

type LessonSense = Lesson['senses'][number];
type LessonGroup = Lesson['hands'][number];

/** Groups of hands that a lesson with a well has. */
const OF_WELL: readonly HandGroup[] = ['well', 'annulus', 'water', 'finish'];

const SENSES_OF: Readonly<Record<SenseId, readonly LessonSense[]>> = {
  returns: ['returns'],
  fluid: ['feel', 'funnel'],
  sound: ['stem'],
  rope: ['stem'],
  pit: ['pit', 'stick'],
  pump: ['pump'],
};

/** The senses of the lesson: those of drilling while rods hang in the hole, then those of the well. */
export function sensesOffered(lesson: Lesson, phase: WellPhase): Reading['id'][] {
  const drilling = (Object.keys(SENSES_OF) as SenseId[]).filter((id) =>
    SENSES_OF[id].some((sense) => lesson.senses.includes(sense)),
  );
  if (phase === 'open') return ['casing', ...drilling.filter((id) => id === 'returns' || id === 'pit')];
  return phase === 'closed' ? [...WELL_SENSE_IDS] : drilling;
}

/** A pit that begins with less than this share of what it holds is one to be filled. ASSUMED. */
const LOW_frac = 0.75;

/** The pit is filled by the crew: where it is dug first, or where it begins low. */
function fillsPit({ opening }: Lesson, { session }: Desk): boolean {
  const { settling, suction } = session.run.state.pit;
  return opening.setOut === true || opening.pit_L / 1000 < LOW_frac * (settling.capacity_m3 + suction.capacity_m3);
}

/**
 * The groups of hands of the lesson, in their fixed order. Acts whose only fruit is a sense that is off are left out. Where all groups are
 * seen at once no hand stands twice.
 */
export function handsOffered(lesson: Lesson, desk: Desk, allSeen: boolean): HandSet[] {
  const { session } = desk;
  const { senses, run } = session;
  const on = (sense: LessonSense): boolean => lesson.senses.includes(sense);
  const stem = [...mendStem(desk), ...stemHands(desk, senses, !senses.well)];
  const drilling: HandSet[] = [
    { group: 'stem', hands: stem },
    { group: 'pump', hands: [...mendPump(desk, senses), ...pumpHands(desk, senses)] },
  ];
  const pit: HandSet = {
    group: 'pit',
    hands: [...mendPit(desk, senses), ...pitHands(desk, senses, on('stick'), fillsPit(lesson, desk))],
  };
  const fluid: HandSet = { group: 'fluid', hands: fluidHands(desk, senses, on('feel'), on('funnel')) };
  const tray: HandSet = { group: 'tray', hands: trayHands(desk, senses) };
  const book: HandSet = { group: 'book', hands: bookHands(desk, run.state.ownLog.length, run.state.notes.length) };
  const sets = setsOf().filter(({ group }) =>
    lesson.hands.includes(OF_WELL.includes(group) ? 'well' : (group as LessonGroup)),
  );
  return allSeen ? once(sets) : sets;

  /** What there is to do at this stage of the work stands first; what is over steps back. */
  function setsOf(): HandSet[] {
    const { well } = senses;
    if (!well) return [...drilling, pit, fluid, tray, book];
    const phase = wellPhase(desk);
    if (phase === 'drilling')
      return [...drilling, pit, fluid, tray, { group: 'well', hands: drillingWellHands(desk, well) }, book];
    const sets = wellSets(desk, well, phase);
    if (phase === 'pulling') return [...sets, ...drilling, pit, fluid, naming(tray, book)];
    return phase === 'open'
      ? [...sets, pit, naming(tray, book)]
      : [...sets.map((set) => withTopUp(set, pit)), naming(tray, book)];
  }
}

function once(sets: readonly HandSet[]): HandSet[] {
  const seen = new Set<string>();
  return sets.map((set) => ({ ...set, hands: set.hands.filter(({ id }) => !seen.has(id) && seen.add(id)) }));
}

/** With the casing set, all that is left to do at the pit is to dip a bucket for the ring: it is kept full while it is filled. */
function withTopUp(set: HandSet, pit: HandSet): HandSet {
  if (set.group !== 'annulus') return set;
  return { ...set, hands: [...set.hands, ...pit.hands.filter((hand) => hand.id === 'topUp')] };
}

/** No sample can be caught any more, but those in the tray can still be named: with the book. */
function naming(tray: HandSet, book: HandSet): HandSet {
  return { group: 'book', hands: [...tray.hands.filter((hand) => hand.id === 'nameSample'), ...book.hands] };
}
