// Words used all over the app: its name, time, common buttons, warnings.

export const app = {
  'app.name': 'Hand jetting trainer',
  'app.title': '{page} · Hand jetting trainer',
  'app.skip': 'Skip to the main part',
  'app.loading': 'Loading…',
  'app.home': 'Home',
  'app.back': 'Back',
  'app.cancel': 'Cancel',
  'app.close': 'Close',
  'app.notFound': 'This page is not here',
  'app.notFoundText': 'The address may be mistyped. Go back to the start.',
  'time.hours': '{h} h',
  'time.hoursMinutes': '{h} h {min} min',
  'time.minutes': '{min} min',
  'time.minutesSeconds': '{min} min {s} s',
  'time.seconds': '{s} s',
} as const;
