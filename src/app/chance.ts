// Chance outside the physics: a new ground's number, an id for a saved run. Works on pages without a secure address too.

export const LARGEST_SEED = 4294967295;

export function newSeed(): number {
  return randomWord();
}

/** An id that no other run on this device has. */
export function newId(): string {
  return `${Date.now().toString(36)}-${randomWord().toString(36)}`;
}

function randomWord(): number {
  try {
    return crypto.getRandomValues(new Uint32Array(1))[0]!;
  } catch {
    return Math.floor(Math.random() * (LARGEST_SEED + 1));
  }
}

/** The number typed for a ground, or null where it is none from 0 to 4294967295. */
export function seedOf(text: string): number | null {
  const trimmed = text.trim();
  if (!/^\d{1,10}$/.test(trimmed)) return null;
  const seed = Number(trimmed);
  return seed <= LARGEST_SEED ? seed : null;
}
