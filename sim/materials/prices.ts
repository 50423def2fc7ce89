// What things cost, in the demo currency "marks". All ASSUMED; petrol per hour the pump runs, crew per person and hour.

export const PRICE_marks = {
  polymerPerKg: 12,
  bentonitePerKg: 0.6,
  /** Per kilogram of the powder, not of the chlorine in it. Clay of the site costs only the hours. */
  chlorinePerKg: 4,
  petrolPerHour: 1.5,
  waterPerL: 0.01,
  crewPerHour: 3,
} as const;
