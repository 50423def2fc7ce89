// Sentences of the headless command.

export const cli = {
  'cli.usage': 'Use: headless VERB. Verbs: ground, lessons, lint, play, replay, trace.',
  'cli.unknownVerb': 'There is no verb "{verb}". Verbs: ground, lessons, lint, play, replay, trace.',
  'cli.unknownOption': 'The verb {verb} has no option "{option}".',
  'cli.missingValue': 'The option {option} needs a value.',
  'cli.twice': 'The option {option} is given twice.',
  'cli.missingOption': 'The verb {verb} needs the option {option}.',
  'cli.missingFile': 'The verb {verb} needs the name of a file.',
  'cli.tooMany': 'The verb {verb} does not take "{word}".',
  'cli.badSeed': 'The seed must be a whole number from 0 to 4294967295, not "{seed}".',
  'cli.unknownSetting': 'There is no setting "{setting}". Settings: {settings}.',
  'cli.unknownLesson': 'There is no lesson "{lesson}". Lessons: {lessons}.',
  'cli.unknownCrew': 'There is no crew "{crew}". Crews: {crews}.',
  'cli.practiceOnly': 'The lesson {lesson} takes no option {option}.',
  'cli.badDepth': 'The depth must be a number of metres from {least_m} to {most_m}, not "{depth}".',
  'cli.badGrounds': 'The number of grounds must be a whole number from 1 to {most}, not "{grounds}".',
  'cli.cannotRead': 'The file "{file}" cannot be read.',
  'cli.cannotWrite': 'The file "{file}" cannot be written.',
  'cli.notReproduced': 'The run is not reproduced.',
} as const;
