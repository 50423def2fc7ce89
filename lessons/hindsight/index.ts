// Door of hindsight inside the lessons.

export { costsOf, dearest, type Cost } from './costs';
export { costElsewhere, costsThere, GROUNDS, type Luck } from './luck';
export { marksAlong, type Mark } from './marks';
export { momentsOf, MOST_STRETCHES, type Moment } from './moments';
export { complete, nextIndex, settled } from './order';
export { elsewhere, joinedGround } from './otherGrounds';
export { runAtMark, valueAt, valueOf, valuing, type Past, type ShortItem, type Value } from './value';
