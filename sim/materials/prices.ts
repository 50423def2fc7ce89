// What things cost, in the demo currency "marks". All ASSUMED.

export const PRICE_marks = {
  polymer_kg: 12,
  petrol_runningHour: 1.5,
  water_L: 0.01,
  crew_personHour: 3,
} as const;
