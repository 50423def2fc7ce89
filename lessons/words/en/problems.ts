// What can be wrong with a run file from outside.

export const problems = {
  'problem.file.tooLarge': 'The file is too large: {size_MB} MB. A run file has at most {limit_MB} MB.',
  'problem.file.empty': 'The file is empty.',
  'problem.file.truncated': 'The file breaks off before its end. Copy it again.',
  'problem.file.notJson': 'The file is not a run file: it is no JSON text.',
  'problem.file.wrongFormat': 'The file is no run of this trainer.',
  'problem.file.newerFormat': 'The file has format version {version}. This trainer reads version {known}.',
  'problem.file.badField': 'The file is damaged at "{field}".',
  'problem.file.unknownLesson': 'The file belongs to a lesson that is not here: {lesson}.',
  'problem.file.otherVersion': 'The file was made with another version: {version}. This version cannot play it again.',
  'problem.file.otherGround': 'The ground in the file is not the ground of its seed.',
  'problem.file.otherStart': 'The run does not begin where the lesson begins. The file was altered.',
  'problem.file.badAct': 'The file holds an act that no run can hold, at second {tick}.',
  'problem.file.otherHash': 'The run does not come out as the file says. The file was altered.',
  'problem.file.otherScore': 'The score comes out as {score}, not as {claimed}. The file was altered.',
} as const;
