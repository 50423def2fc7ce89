// Which hands and senses a lesson offers, and the hands as they stand now.
import type { Lesson } from '$lessons';
import type { Desk } from '../../hands/desk.svelte';
import { fluidHands } from '../../hands/fluid';
import type { HandSet } from '../../hands/hand';
import { bookHands, trayHands } from '../../hands/paper';
import { pitHands } from '../../hands/pit';
import { pumpHands } from '../../hands/pump';
import { stemHands } from '../../hands/stem';
import type { SenseId } from '../../senses/readings';

type LessonSense = Lesson['senses'][number];

const SENSES_OF: Readonly<Record<SenseId, readonly LessonSense[]>> = {
  returns: ['returns'],
  fluid: ['feel', 'funnel'],
  sound: ['stem'],
  rope: ['stem'],
  pit: ['pit', 'stick'],
  pump: ['pump'],
};

export function sensesOffered(lesson: Lesson): SenseId[] {
  return (Object.keys(SENSES_OF) as SenseId[]).filter((id) =>
    SENSES_OF[id].some((sense) => lesson.senses.includes(sense)),
  );
}

/** The groups of hands of the lesson, in their fixed order. Acts whose only fruit is a sense that is off are left out. */
export function handsOffered(lesson: Lesson, desk: Desk): HandSet[] {
  const { session } = desk;
  const { senses, run } = session;
  const on = (sense: LessonSense): boolean => lesson.senses.includes(sense);
  const sets: HandSet[] = [
    { group: 'stem', hands: stemHands(desk, senses, lesson.hands.includes('well')) },
    { group: 'pump', hands: pumpHands(desk, senses) },
    { group: 'pit', hands: pitHands(desk, senses, on('stick'), lesson.opening.setOut === true) },
    { group: 'fluid', hands: fluidHands(desk, senses, on('feel'), on('funnel')) },
    { group: 'tray', hands: trayHands(desk, senses) },
    { group: 'book', hands: bookHands(desk, run.state.ownLog.length, run.state.notes.length) },
  ];
  return sets.filter((set) => lesson.hands.includes(set.group));
}
