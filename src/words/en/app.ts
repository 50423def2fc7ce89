// Words used all over the app: its name, time, common buttons, warnings.

export const app = {
  'app.name': 'Hand jetting trainer',
  'app.title': '{page} · Hand jetting trainer',
  'app.skip': 'Skip to the main part',
  'app.places': 'Places in the app',
  'app.loading': 'Loading…',
  'app.home': 'Start',
  'app.runs': 'Saved runs',
  'app.help': 'Help',
  'app.about': 'About',
  'app.words': 'Words of the trade',
  'words.title': 'Words of the trade',
  'app.back': 'Back',
  'app.cancel': 'Cancel',
  'app.close': 'Close',
  'app.toStart': 'To the start',
  'app.notFound': 'This page is not here',
  'app.notFoundText': 'The address may be mistyped. Go back to the start.',
  'app.notLoaded': 'This part could not be loaded',
  'app.notLoadedText': 'The connection may be gone. Your runs are safe. Try again.',
  'app.tryAgain': 'Try again',
  'app.practiceOnly':
    'Practice only: it does not replace supervised work. Local codes, permits and licensed drillers come first.',

  'crash.title': 'Something broke',
  'crash.text': 'The fault is in the trainer, not in what you did. Your run is kept up to the last act.',
  'crash.goOn': 'Go on from the last save',
  'crash.save': 'Save the run to a file',
  'crash.copy': 'Copy the report',
  'crash.copied': 'The report is copied.',
  'crash.report': 'Report for the people who mend the trainer',

  'debrief.title': 'Looking back',
  'debrief.loading': 'The run is being played through once more…',
  'debrief.none': 'No run to look back on',
  'debrief.noneText': 'Finish a run first, or choose one from the saved runs.',

  'record.title': 'Driller’s record',
  'form.title': 'Blank driller’s record',

  'brief.title': 'Briefing',
  'brief.unknown': 'This lesson is not here',

  'play.title': 'At the hole',
  'play.loading': 'Your run is being fetched…',
  'play.none': 'No run is open',
  'play.noneText': 'Choose a lesson at the start, or a saved run.',

  'storage.missing': 'This browser keeps nothing. Save your run to a file before you close the page.',
  'storage.blocked': 'This browser does not let the page keep runs. Save your run to a file before you close the page.',
  'storage.full': 'This device is full. Save your run to a file, then delete old runs.',

  'time.hours': '{h} h',
  'time.hoursMinutes': '{h} h {min} min',
  'time.minutes': '{min} min',
  'time.minutesSeconds': '{min} min {s} s',
  'time.seconds': '{s} s',
} as const;
