// Words of the files part.

export const files = {} as const;
