// The device's memory as the screens see it: settings, learners, and whether anything is kept at all.
import type { Sitting } from '$lessons';
import { setMotion } from './motion';
import { isPicture, type PictureName } from './pictures';
import { merged, withBegun, withRun, withSeen, type FinishedRun } from './progress';
import { FIRST_SETTINGS, type KeptExercise, type Learner, type SavedRun, type Settings } from './records';
import { memoryStorage, openStorage, type Storage, type StorageTrouble } from './storage';

class Device {
  settings: Settings = $state.raw(FIRST_SETTINGS);
  learners: readonly Learner[] = $state.raw([]);
  runs: readonly SavedRun[] = $state.raw([]);
  exercises: readonly KeptExercise[] = $state.raw([]);
  trouble: StorageTrouble | null = $state(null);
  storage: Storage = memoryStorage();

  /** The learner whose turn it is, or null. */
  readonly learner: Learner | null = $derived(this.learners.find((one) => one.id === this.settings.learner) ?? null);

  /** Opens the store and reads what is there; the first screen waits for it. */
  async open(): Promise<void> {
    this.storage = await openStorage((trouble) => (this.trouble = trouble));
    const kept = await this.storage.get('settings', 'settings');
    this.settings = { ...FIRST_SETTINGS, ...kept };
    this.learners = (await this.storage.all('learners')).sort((a, b) => a.made_ms - b.made_ms);
    await this.readRuns();
    this.exercises = (await this.storage.all('exercises')).sort((a, b) => b.saved_ms - a.saved_ms);
    showSettings(this.settings);
  }

  change(part: Partial<Settings>): void {
    this.settings = { ...this.settings, ...part };
    showSettings(this.settings);
    void this.storage.put('settings', this.settings);
  }

  /** Chooses a learner by picture or number; a new one is added, a known one taken up again. */
  choose(id: string): void {
    if (!this.learners.some((one) => one.id === id)) {
      const learner: Learner = {
        id,
        picture: isPicture(id) ? (id as PictureName) : null,
        number: isPicture(id) ? null : Number(id.slice(2)),
        made_ms: Date.now(),
        best: {},
      };
      this.learners = [...this.learners, learner];
      void this.storage.put('learners', learner);
    }
    this.change({ learner: id });
  }

  /** Enters a finished run into its learner's standing: once for each run. */
  stand(who: string, run: FinishedRun): void {
    this.#keep(who, (learner) => withRun(learner, run));
  }

  /** Notes that a learner stands on a ground: from now on it is known. */
  see(who: string, lesson: string, seed: number): void {
    this.#keep(who, (learner) => withSeen(learner, lesson, seed));
  }

  /** Notes that a learner has begun an attempt at an exercise in a class. */
  sit(who: string, exercise: string, { classCode, attempt }: Sitting): void {
    this.#keep(who, (learner) => withBegun(learner, exercise, classCode, attempt));
  }

  /** Adds a learner from a file: as a new one, or joined with the one of that id. */
  takeIn(learner: Learner): void {
    const known = this.learners.some((one) => one.id === learner.id);
    if (known) this.#keep(learner.id, (here) => merged(here, learner));
    else {
      this.learners = [...this.learners, learner];
      void this.storage.put('learners', learner);
    }
  }

  /** Forgets a learner, and the runs kept under that sign. */
  async removeLearner(id: string): Promise<void> {
    this.learners = this.learners.filter((one) => one.id !== id);
    if (this.settings.learner === id) this.change({ learner: null });
    await this.storage.remove('learners', id);
    for (const run of this.runs.filter((one) => one.who === id)) await this.removeRun(run.id);
  }

  #keep(who: string, change: (learner: Learner) => Learner): void {
    const learner = this.learners.find((one) => one.id === who);
    if (!learner) return;
    const changed = change(learner);
    if (changed === learner) return;
    this.learners = this.learners.map((one) => (one.id === who ? changed : one));
    void this.storage.put('learners', changed);
  }

  async readRuns(): Promise<void> {
    this.runs = (await this.storage.all('runs')).sort((a, b) => b.saved_ms - a.saved_ms);
  }

  async putRun(run: SavedRun): Promise<void> {
    this.runs = [run, ...this.runs.filter((one) => one.id !== run.id)].sort((a, b) => b.saved_ms - a.saved_ms);
    await this.storage.put('runs', run);
  }

  async putExercise(kept: KeptExercise): Promise<void> {
    this.exercises = [kept, ...this.exercises.filter((one) => one.id !== kept.id)];
    await this.storage.put('exercises', kept);
  }

  /** Forgets an exercise and the results taken in for it; runs of it stay, for they carry it. */
  async removeExercise(id: string): Promise<void> {
    this.exercises = this.exercises.filter((one) => one.id !== id);
    await this.storage.remove('exercises', id);
    for (const result of await this.storage.all('results'))
      if (result.exercise === id) await this.storage.remove('results', result.id);
  }

  async removeRun(id: string): Promise<void> {
    this.runs = this.runs.filter((one) => one.id !== id);
    if (this.settings.run === id) this.change({ run: null });
    await this.storage.remove('runs', id);
    await this.storage.remove('states', id);
  }
}

function showSettings(settings: Settings): void {
  const { dataset } = document.documentElement;
  dataset['theme'] = settings.theme;
  dataset['text'] = settings.text;
  dataset['hand'] = settings.hand;
  setMotion(settings.motion);
}

export const device = new Device();
