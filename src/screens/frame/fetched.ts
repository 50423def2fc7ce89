// The screens that are fetched when one goes there, so that the first screen stays light.
import type { Component } from 'svelte';
import type { Place } from '../../app/places';

const LOADERS = {
  work: () => import('../play/Play.svelte'),
  debrief: () => import('../debrief/Debrief.svelte'),
  record: () => import('../record/RunRecord.svelte'),
  form: () => import('../record/BlankForm.svelte'),
  runs: () => import('../runs/Runs.svelte'),
  about: () => import('../about/About.svelte'),
  help: () => import('../help/Help.svelte'),
  words: () => import('../glossary/Glossary.svelte'),
} as const;

type FetchedName = keyof typeof LOADERS | 'brief';
export type FetchedPlace = Extract<Place, { readonly name: unknown }> & { readonly name: FetchedName };

export function isFetched(place: Place): place is FetchedPlace {
  return place.name === 'brief' || Object.hasOwn(LOADERS, place.name);
}

/** The screen of a place with what it is to show. Rejects where it cannot be fetched. */
export async function fetchScreen(
  place: FetchedPlace,
): Promise<{ Screen: Component<{ lessonId: string }>; lessonId: string }> {
  const lessonId = place.name === 'brief' ? (place as { lesson: string }).lesson : '';
  const part =
    place.name === 'brief'
      ? await import('../briefing/Briefing.svelte')
      : await LOADERS[place.name as keyof typeof LOADERS]();
  return { Screen: part.default as Component<{ lessonId: string }>, lessonId };
}
