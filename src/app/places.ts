// The places of the app and their addresses: the part after the #.

export type Place =
  | { readonly name: 'start' | 'work' | 'debrief' | 'record' | 'form' | 'runs' | 'about' | 'help' | 'words' | 'lost' }
  | { readonly name: 'brief'; readonly lesson: string };

const PLAIN = ['work', 'debrief', 'record', 'form', 'runs', 'about', 'help', 'words'] as const;

export function placeOf(hash: string): Place {
  const [name = '', detail = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  if (rest.length > 0) return { name: 'lost' };
  if (name === '') return { name: 'start' };
  if (name === 'brief' && /^[a-z0-9-]{1,40}$/.test(detail)) return { name: 'brief', lesson: detail };
  const plain = PLAIN.find((one) => one === name);
  return plain && detail === '' ? { name: plain } : { name: 'lost' };
}

export function addressOf(place: Place): string {
  if (place.name === 'start' || place.name === 'lost') return '#/';
  return place.name === 'brief' ? `#/brief/${place.lesson}` : `#/${place.name}`;
}
