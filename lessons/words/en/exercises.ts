// What can be wrong with an exercise or a result from outside, and what the examiner of an exercise says.

export const exercises = {
  'problem.exercise.tooLarge': 'The exercise is too large: {size_kB} kB. It may have {limit_kB} kB at most.',
  'problem.exercise.empty': 'There is nothing here.',
  'problem.exercise.notOne': 'This is no exercise of this trainer.',
  'problem.exercise.truncated': 'The exercise breaks off before its end. Copy it again.',
  'problem.exercise.damaged': 'The exercise is damaged and cannot be opened.',
  'problem.exercise.newer': 'The exercise has format version {version}. This trainer reads version {known}.',
  'problem.exercise.badField': 'The exercise is wrong at "{field}".',
  'problem.exercise.sum': 'The points sum to {sum}, not to 100. See "{field}".',
  'problem.exercise.noItem': 'This lesson does not judge that. See "{field}".',
  'problem.exercise.crewBefore': 'Another crew works before in this lesson, so that cannot be set. See "{field}".',

  'problem.result.tooLarge': 'The result is too large: {size_MB} MB. It may have {limit_MB} MB at most.',
  'problem.result.empty': 'There is nothing here.',
  'problem.result.notOne': 'This is no result of this trainer.',
  'problem.result.truncated': 'The result breaks off before its end. Copy it again.',
  'problem.result.damaged': 'The letters of the result are damaged. Copy them again.',
  'problem.result.newer': 'The result has format version {version}. This trainer reads version {known}.',
  'problem.result.badField': 'The result is wrong at "{field}".',
  'problem.result.parts': 'Only {there} of {of} parts of the result are here.',
  'problem.result.noExercise': 'This run was not played in an exercise.',
  'problem.result.otherExercise': 'The result belongs to another exercise.',
  'problem.result.otherEdition': 'It was played with edition {edition} of the exercise. Here is edition {here}.',
  'problem.result.changedExercise':
    'The exercise here is not the one it was played with. Both call themselves edition {edition}.',
  'problem.result.otherVersion': 'It was played with version {version} of the trainer. This one cannot play it again.',
  'problem.result.altered': 'What is written in it was changed after it was handed in.',
  'problem.result.unplayable': 'It cannot be played again: something in it was not foreseen.',
  'problem.result.otherEnd': 'The run does not end where the result says.',
} as const;
