// Hands out results to be judged: to as many workers as the device has room for, or to the page in short slices.
import { helperCount, inSlices, workersHere, type Helper, type HelperTalk } from '../../app/sideWork';
import { carryOut, type Judged, type Order } from './orders';

export type MakeJudge = (talk: HelperTalk<Judged>) => Helper<Order>;

async function workerJudge(): Promise<MakeJudge> {
  const inWorker = await workersHere();
  return (talk) => inWorker('judge', null, talk);
}

export const slicedJudge: MakeJudge = (talk) => inSlices(carryOut, talk);

/** Workers where there are any, else the page. */
async function judgesHere(): Promise<{ make: MakeJudge; count: number }> {
  if (typeof Worker === 'undefined') return { make: slicedJudge, count: 1 };
  try {
    return { make: await workerJudge(), count: helperCount(navigator.hardwareConcurrency) };
  } catch {
    return { make: slicedJudge, count: 1 };
  }
}

interface Judge {
  readonly helper: Helper<Order>;
  order: Order | null;
}

export class Judges {
  readonly #tell: (judged: Judged) => void;
  readonly #find: typeof judgesHere;
  readonly #waiting: Order[] = [];
  #judges: Judge[] = [];
  #make: MakeJudge | null = null;
  #most = 1;
  #opening = false;

  /** `tell` hears of each judgement; `find`: a test passes its own. */
  constructor(tell: (judged: Judged) => void, find: typeof judgesHere = judgesHere) {
    this.#tell = tell;
    this.#find = find;
  }

  give(orders: readonly Order[]): void {
    this.#waiting.push(...orders);
    void this.#open();
  }

  /** Gives up what is under way and what waits. */
  stop(): void {
    this.#waiting.length = 0;
    for (const { helper } of this.#judges) helper.stop();
    this.#judges = [];
  }

  async #open(): Promise<void> {
    if (this.#opening) return;
    if (!this.#make) {
      this.#opening = true;
      const { make, count } = await this.#find();
      this.#opening = false;
      this.#make = make;
      this.#most = count;
    }
    while (this.#judges.length < Math.min(this.#most, this.#judges.length + this.#waiting.length)) this.#hire();
    for (const judge of this.#judges) this.#next(judge);
  }

  #hire(): void {
    const make = this.#make!;
    const judge: { helper: Helper<Order> | null; order: Order | null } = { helper: null, order: null };
    const hired = judge as Judge;
    try {
      judge.helper = make({
        report: (judged) => {
          if (judged) this.#tell(judged);
          else {
            hired.order = null;
            this.#next(hired);
          }
        },
        failed: () => this.#lost(hired),
      });
    } catch {
      this.#make = slicedJudge;
      this.#most = 1;
      return;
    }
    this.#judges.push(hired);
  }

  #next(judge: Judge): void {
    if (judge.order || !this.#judges.includes(judge)) return;
    const order = this.#waiting.shift();
    if (order) {
      judge.order = order;
      judge.helper.give(order);
    }
    // A judge without work would only take room.
    else this.#dismiss(judge);
  }

  #dismiss(judge: Judge): void {
    judge.helper.stop();
    this.#judges = this.#judges.filter((one) => one !== judge);
  }

  /** A worker failed: the page goes on with what it had. */
  #lost(judge: Judge): void {
    this.#dismiss(judge);
    if (judge.order) this.#waiting.unshift(judge.order);
    this.#make = slicedJudge;
    this.#most = Math.max(1, this.#judges.length);
    void this.#open();
  }
}
