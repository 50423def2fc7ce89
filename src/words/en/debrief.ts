// Words of the debrief part.

export const debrief = {} as const;
