// Where in the app one is: the part of the address after the #. The browser's back button does the rest.

export type Place =
  | { readonly name: 'start' | 'work' | 'debrief' | 'runs' | 'about' | 'help' | 'lost' }
  | { readonly name: 'brief'; readonly lesson: string };

const PLAIN = ['work', 'debrief', 'runs', 'about', 'help'] as const;

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

class Router {
  place: Place = $state.raw(placeOf(location.hash));
  /** Grows on each change of place, so that the frame moves the focus once for each. */
  changes = $state(0);

  constructor() {
    window.addEventListener('hashchange', () => {
      this.place = placeOf(location.hash);
      this.changes++;
    });
  }

  go(place: Place): void {
    location.hash = addressOf(place);
  }

  /** Takes the present place out of the history: a way back would lead nowhere. */
  replace(place: Place): void {
    location.replace(addressOf(place));
  }
}

export const router = new Router();
