// A reading as people read it off: to the nearest mark.

export const roundTo = (value: number, stepSize: number): number => Math.round(value / stepSize) * stepSize;
