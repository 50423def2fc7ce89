// What a hand that looks back can be asked, and what it reports. Plain data: it goes to a worker and comes back.
import { costElsewhere, marksAlong, valuing, type Mark, type Moment, type Past, type Value } from '$lessons';

export type Order =
  /** Marks to lay at moments, each with its index; known: marks that it may start from. */
  | {
      readonly kind: 'marks';
      readonly missing: readonly { readonly index: number; readonly moment: Moment }[];
      readonly known: readonly Mark[];
    }
  | { readonly kind: 'value'; readonly index: number; readonly mark: Mark }
  | {
      readonly kind: 'elsewhere';
      readonly index: number;
      readonly n: number;
      readonly from: Mark;
      readonly to: Moment;
    };

export type Report =
  | { readonly kind: 'mark'; readonly index: number; readonly mark: Mark }
  | { readonly kind: 'value'; readonly index: number; readonly value: Value }
  | { readonly kind: 'elsewhere'; readonly index: number; readonly n: number; readonly points: number | null };

/** Works an order off; yields each report when it is there, and null now and then. */
export function* carryOut(past: Past, order: Order): Generator<Report | null, void> {
  if (order.kind === 'marks') {
    const { missing, known } = order;
    const moments = missing.map(({ moment }) => moment);
    let laid = 0;
    for (const mark of marksAlong(past, moments, known))
      yield mark && { kind: 'mark', index: missing[laid++]!.index, mark };
  } else if (order.kind === 'value') {
    const { index, mark } = order;
    const value = yield* valuing(past, mark);
    yield { kind: 'value', index, value };
  } else {
    const { index, n, from, to } = order;
    const points = yield* costElsewhere(past, from, to, n);
    yield { kind: 'elsewhere', index, n, points };
  }
}
