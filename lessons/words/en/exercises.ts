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
} as const;
