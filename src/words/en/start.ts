// Words of the start part.

export const start = {} as const;
