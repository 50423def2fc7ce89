// What the water of the circuit carries dissolved or too finely spread to count as grains.

/**
 * In this order in every array by substance; masses in kg. soaked: polymer that thickens; soaking: powder not yet soaked;
 * bentonite: swollen; swelling: bentonite that has not swollen yet; chlorine: free chlorine, not the powder it came with.
 */
export const SUBSTANCES = ['soaked', 'soaking', 'bentonite', 'chlorine', 'salt', 'swelling'] as const;
export const SUBSTANCE_COUNT = SUBSTANCES.length;

export const SOAKED = 0;
export const SOAKING = 1;
export const BENTONITE = 2;
export const CHLORINE = 3;
export const SALT = 4;
export const SWELLING = 5;
