// Words of the steering window, of turns taken at one phone, of two runs side by side.

export const live = {} as const;
