// Words of the editor of an exercise.

export const editor = {} as const;
