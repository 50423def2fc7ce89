// Words of the class board, of exports and of papers.

export const results = {} as const;
