// The page itself draws: where there are no workers with a canvas, and in tests.

import type { MakeHand } from './orders';
import { createPainter } from './painter';

export const pageHand: MakeHand = async (canvas, beginning, tell) => {
  const painter = await createPainter(canvas, beginning, tell);
  return { kind: painter.kind, give: (order) => painter.carryOut(order), stop: () => painter.destroy() };
};
