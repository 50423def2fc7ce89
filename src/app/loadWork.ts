// Fetches the work screen with its drawing of the ground, while the briefing is read.

type WorkPart = typeof import('../screens/work/Work.svelte');

let loading: Promise<WorkPart> | null = null;

export function loadWork(): Promise<WorkPart> {
  loading ??= import('../screens/work/Work.svelte').catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}
