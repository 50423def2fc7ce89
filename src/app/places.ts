// The places of the app and their addresses: the part after the #.

const PLAIN = [
  'work',
  'debrief',
  'record',
  'form',
  'runs',
  'about',
  'help',
  'words',
  'class',
  'guide',
  'beside',
  'steer',
] as const;
type PlainName = (typeof PLAIN)[number];

/** Places of one exercise kept on this device, by its id: changed, given out, its results, its papers; the briefing of whoever plays it. */
const OF_EXERCISE = ['edit', 'share', 'board', 'papers', 'task'] as const;
type OfExercise = (typeof OF_EXERCISE)[number];

export type Place =
  | { readonly name: 'start' | 'lost' | PlainName }
  | { readonly name: 'brief'; readonly lesson: string }
  | { readonly name: OfExercise; readonly exercise: string }
  /** An exercise that came by a link: the class, or - for none, and its letters. */
  | { readonly name: 'exercise'; readonly classCode: string; readonly packed: string };

const ID = /^[a-z0-9-]{1,40}$/;

export function placeOf(hash: string): Place {
  const [name = '', detail = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  if (name === 'exercise' && rest.length === 1) return { name, classCode: detail, packed: rest[0]! };
  if (rest.length > 0) return { name: 'lost' };
  if (name === '') return { name: 'start' };
  if (name === 'brief' && ID.test(detail)) return { name, lesson: detail };
  const ofExercise = OF_EXERCISE.find((one) => one === name);
  if (ofExercise && ID.test(detail)) return { name: ofExercise, exercise: detail };
  const plain = PLAIN.find((one) => one === name);
  return plain && detail === '' ? { name: plain } : { name: 'lost' };
}

/** What a place is about, beside its name: a lesson, an exercise; '' for most. */
export function detailOf(place: Place): string {
  if (place.name === 'brief') return place.lesson;
  if (place.name === 'exercise') return `${place.classCode}/${place.packed}`;
  return 'exercise' in place ? place.exercise : '';
}

export function addressOf(place: Place): string {
  if (place.name === 'start' || place.name === 'lost') return '#/';
  const detail = detailOf(place);
  return detail === '' ? `#/${place.name}` : `#/${place.name}/${detail}`;
}
