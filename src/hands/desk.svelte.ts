// Where the learner is on the work screen: which group is open, which question is asked, what was refused last.
// Acts go through here, so that every refusal is said at the button and aloud.
import { canAct, type ActionName, type Payload, type WellPlan } from '$sim';
import { announcer } from '../app/announcer.svelte';
import type { Session } from '../app/session.svelte';
import { say, type KeyedMessage } from '../words';
import { firstValues, payloadOf, type Ask, type AskValue, type ChoiceAsk, type OptionAsk } from './ask';
import type { AskId } from './asks';
import type { HandGroup } from './hand';
import { Hold } from './hold.svelte';

/** Papers that lie over the whole place of work, not only over the hands. */
export const LARGE_PAPERS = ['site', 'planWell'] as const;
export type LargePaper = (typeof LARGE_PAPERS)[number];

export type PanelId =
  | AskId
  | LargePaper
  | 'record'
  | 'testPlot'
  | 'nameSample'
  | 'logLayer'
  | 'note'
  | 'clock'
  | 'cautions'
  | 'hints'
  | 'menu';

/** Who sets something a step at a time presses again within this time, ms. ASSUMED. */
const STEPPED_ms = 1500;

export class Desk {
  readonly session: Session;
  group: HandGroup = $state('stem');
  /** The hand that the coach spoke of when its group was last brought to the front, or left where it was by choice. */
  broughtFor: string | null = null;
  panel: PanelId | null = $state(null);
  /** The sample that the naming panel shows. */
  sample = $state(0);
  /** Something is being set a step at a time: the finger may be on its way to the next step. */
  stepping = $state(false);
  #stepped: ReturnType<typeof setTimeout> | undefined;
  /** The plan of the well as it was left on the board, not written down yet. */
  draft: WellPlan | null = $state.raw(null);
  /** The last thing that could not be done, shown at its button until the next act. */
  refused: { id: string; why: KeyedMessage } | null = $state.raw(null);

  /** What is held down. */
  readonly hold: Hold;

  constructor(session: Session) {
    this.session = session;
    this.hold = new Hold(this);
  }

  /** Why the act cannot be done now, or null. Call it where session.frame is read. */
  whyNot(action: ActionName, payload: Payload = {}): KeyedMessage | null {
    const result = canAct(this.session.run, action, payload);
    if (result.kind === 'done') return null;
    return { key: result.kind === 'refused' ? `refusal.${result.reason}` : 'work.limit.reached' };
  }

  /** Does the act; on refusal the reason stands at the hand of that id. */
  act(id: string, action: ActionName, payload: Payload = {}): boolean {
    // Who waits has the hands free.
    if (action === 'waitFor') this.hold.letGo();
    const result = this.session.act(action, payload);
    if (result.kind === 'done') {
      this.refused = null;
      return true;
    }
    this.refused = { id, why: { key: result.kind === 'refused' ? `refusal.${result.reason}` : 'work.limit.reached' } };
    return false;
  }

  /** The same for a thing set a step at a time. */
  step(id: string, action: ActionName, payload: Payload): void {
    if (!this.act(id, action, payload)) return;
    this.stepping = true;
    this.pressed();
  }

  /** A finger is at the screen: whoever was setting something still is. */
  pressed(): void {
    if (!this.stepping) return;
    clearTimeout(this.#stepped);
    this.#stepped = setTimeout(() => (this.stepping = false), STEPPED_ms);
  }

  /** A limit of the hand itself, which the run knows nothing of. */
  refuse(id: string, why: KeyedMessage): void {
    this.refused = { id, why };
    announcer.say(say(why.key, why.data));
  }

  /** The options of a choice that this job has the means for. */
  offered(choice: ChoiceAsk): readonly OptionAsk[] {
    const { opening, holes = 1 } = this.session.lesson;
    const { well } = this.session.run.scenario;
    const kit: readonly AskValue[] | undefined = choice.offered && (well?.[choice.offered] ?? []);
    return choice.options.filter(({ needs, value }) => {
      if (kit && !kit.includes(value)) return false;
      if (needs === 'moreGround') return this.session.senses.hole < holes;
      return !needs || (opening[needs] ?? 0) > 0;
    });
  }

  /** The question as this job can ask it: a choice of which nothing is offered falls away. */
  fitted(ask: Ask): Ask {
    return { ...ask, choices: (ask.choices ?? []).filter((choice) => this.offered(choice).length > 0) };
  }

  /** What a question is set to before anything is touched: what is offered, and as it was planned where there is a plan. */
  start(ask: Ask): Record<string, AskValue> {
    const values = firstValues(ask);
    const plan: Partial<Record<string, AskValue>> = { ...this.session.senses.well?.plan };
    for (const choice of ask.choices ?? []) {
      const offered = this.offered(choice).map(({ value }) => value);
      const planned = plan[choice.field];
      if (choice.offered && planned !== undefined && offered.includes(planned)) values[choice.field] = planned;
      else if (offered.length > 0 && !offered.includes(values[choice.field]!)) values[choice.field] = offered[0]!;
    }
    return values;
  }

  /** Why the act of a question cannot be done now, whatever is answered: asked with the answers that it starts with. */
  whyNotAsk(ask: Ask): KeyedMessage | null {
    const fitted = this.fitted(ask);
    return this.whyNot(fitted.action, payloadOf(fitted, this.start(fitted)));
  }

  /** How much is left of what an option uses up, kg. */
  left_kg({ needs }: OptionAsk): number {
    return needs === 'moreGround' ? 0 : this.session.senses.stock[needs ?? 'powder_kg'];
  }

  /** The large paper that is open, or null. */
  get large(): LargePaper | null {
    return LARGE_PAPERS.find((paper) => paper === this.panel) ?? null;
  }

  /** What lies over the hands lets go of them: nobody sees what is held. */
  open(panel: PanelId): void {
    this.hold.letGo();
    this.refused = null;
    this.panel = panel;
  }

  /** Opens the naming of one sample. */
  name(sample: number): void {
    this.sample = sample;
    this.open('nameSample');
  }

  close(): void {
    this.panel = null;
  }
}
