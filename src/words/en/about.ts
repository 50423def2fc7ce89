// Words of the about part.

export const about = {} as const;
