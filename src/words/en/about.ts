// Words of the page about the trainer: what it is for, its limits, its cautions, its licence.

export const about = {
  'about.title': 'About and cautions',
  'about.lead':
    'A practice ground for people who sink small wells by jetting: light rods, a small pump, a pit, and judgement.',
  'about.limits': 'Its limits',
  'about.limits.1': 'It does not replace supervised practice at a real hole.',
  'about.limits.2': 'Local codes, permits and licensed drillers come first.',
  'about.limits.3': 'The ground, the kit and the prices are invented. Real ground differs.',
  'about.limits.4': 'A passed lesson is practice, not a licence to drill.',
  'about.limits.5': 'No new well is used for drinking before a laboratory says so.',
  'about.work': 'Dangers of the real work',
  'about.model': 'How true it is',
  'about.model.1': 'The flow, the climb of the grains, the pit and the bit follow published laws.',
  'about.model.2': 'Where no measurement was found, a value is assumed, and the source files say so.',
  'about.model.3': 'The same acts on the same ground give the same run on every device.',
  'about.privacy': 'What it knows of you',
  'about.privacy.1': 'Learners are pictures or numbers. Names are not asked.',
  'about.privacy.2': 'Runs stay on this device until you save or delete them.',
  'about.privacy.3': 'The page asks no other computer for anything.',
  'about.privacy.4': 'Who knows how can find the ground in the page’s memory. It is a trainer, not an exam hall.',
  'about.licence': 'Licence',
  'about.licence.text': 'Free for everybody to use, copy, change and pass on, under the MIT licence.',
} as const;
