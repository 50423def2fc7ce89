// Words of the help part.

export const help = {} as const;
