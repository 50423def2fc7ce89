// Words of the drawing of the ground and of the charts.

export const cutaway = {} as const;
