// Fetches the playing part (lessons, physics, session) once, after the first screen stands.

export type Play = typeof import('./play');

let loading: Promise<Play> | null = null;

/** The playing part; after a failed load the next call tries again. */
export function loadPlay(): Promise<Play> {
  loading ??= import('./play').catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}
