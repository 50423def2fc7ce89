// Where in the app one is, read from the address. The browser's back button does the rest.
import { addressOf, placeOf, type Place } from './places';

export { addressOf, type Place } from './places';

class Router {
  place: Place = $state.raw(placeOf(location.hash));
  /** Grows on each change of place, so that the frame moves the focus once for each. */
  changes = $state(0);
  /** What had the focus when the place last changed: the link that was followed, say. */
  focusedBefore: Element | null = null;

  constructor() {
    window.addEventListener('hashchange', () => {
      this.focusedBefore = document.activeElement;
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
