// Door of hindsight inside the lessons.

export { costsOf, dearest, type Cost } from './costs';
export { costElsewhere, costsThere, GROUNDS, type Luck } from './luck';
export { MarkBook } from './markBook';
export { lastBefore, markOf, marksAlong, runAtMark, type Mark, type Past } from './marks';
export { momentsOf, MOST_STRETCHES, type Moment } from './moments';
export { complete, nextIndex, settled } from './order';
export { elsewhere, joinedGround } from './otherGrounds';
export { valueAt, valueOf, valuing, type ShortItem, type Value } from './value';
