// Words of the help, and what each key does.

export const help = {
  'key.help': 'Open or close the help',
  'key.nextStep': 'Next step of the debrief',
  'key.previousStep': 'Step before',
} as const;
