// The screens that are fetched when one goes there, so that the first screen stays light.
import type { Component } from 'svelte';
import { detailOf, type Place } from '../../app/places';

type Screen = Component<{ detail: string }>;

const LOADERS = {
  brief: () => import('../briefing/Briefing.svelte'),
  work: () => import('../play/Play.svelte'),
  debrief: () => import('../debrief/Debrief.svelte'),
  record: () => import('../record/RunRecord.svelte'),
  form: () => import('../record/BlankForm.svelte'),
  runs: () => import('../runs/Runs.svelte'),
  about: () => import('../about/About.svelte'),
  help: () => import('../help/Help.svelte'),
  words: () => import('../glossary/Glossary.svelte'),
  class: () => import('../class/Class.svelte'),
  guide: () => import('../class/Guide.svelte'),
  exercise: () => import('../class/Arrived.svelte'),
  share: () => import('../class/Share.svelte'),
  task: () => import('../class/Task.svelte'),
  edit: () => import('../exercise/Editor.svelte'),
  board: () => import('../results/Board.svelte'),
  papers: () => import('../results/Papers.svelte'),
  beside: () => import('../live/Beside.svelte'),
  steer: () => import('../live/Steer.svelte'),
} as const;

type FetchedName = keyof typeof LOADERS;
export type FetchedPlace = Extract<Place, { readonly name: unknown }> & { readonly name: FetchedName };

export function isFetched(place: Place): place is FetchedPlace {
  return Object.hasOwn(LOADERS, place.name);
}

/** The screen of a place with what it is to show. Rejects where it cannot be fetched. */
export async function fetchScreen(place: FetchedPlace): Promise<{ Screen: Screen; detail: string }> {
  const part = await LOADERS[place.name]();
  return { Screen: part.default as unknown as Screen, detail: detailOf(place) };
}
