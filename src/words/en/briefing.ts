// Words of the briefing part.

export const briefing = {} as const;
