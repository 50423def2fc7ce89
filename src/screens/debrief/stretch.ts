// A stretch of the run in words: what was done in it, what it lost, how the well changed.
import { costsThere, GROUNDS, type Cost, type Luck } from '$lessons';
import type { LogEntry } from '$sim';
import { say, t } from '../../words';
import { daysWords } from './wellVerdict';

/** So many different acts are named. */
const SHOWN = 5;

/** From when to when; one time where both read alike. */
export function whenWords({ from, to }: Pick<Cost, 'from' | 'to'>): string {
  const at = t('hindsight.at', { from_s: from.tick });
  if (at === t('hindsight.at', { from_s: to.tick })) return at;
  return t('hindsight.when', { from_s: from.tick, to_s: to.tick });
}

export function actsWords(log: readonly LogEntry[], { from, to }: Pick<Cost, 'from' | 'to'>): string {
  const counts = new Map<string, number>();
  for (const [, action] of log.slice(from.entries, to.entries)) counts.set(action, (counts.get(action) ?? 0) + 1);
  if (counts.size === 0) return t('hindsight.waited');
  const named = [...counts]
    .slice(0, SHOWN)
    .map(([action, n]) => (n > 1 ? t('hindsight.times', { what: `did.${action}`, n }) : say(`did.${action}`)));
  const rest = counts.size - named.length;
  return t('hindsight.acts', { acts: named.join(', ') }) + (rest > 0 ? ' …' : '');
}

/** The sentences of a stretch: the items that were lost most, then what the well and the hours came to. */
export function stretchSentences({ lost, before, after }: Cost, most = 2): string[] {
  const sentences = lost
    .slice(0, most)
    .map(({ id, lost: points, reason }) =>
      t('hindsight.lost', { item: `item.${id}`, lost: points, why: say(reason.key, reason.data) }),
    );
  const yields = [before.well?.dry_Lmin ?? 0, after.well?.dry_Lmin ?? 0] as const;
  if (before.well && Math.abs(yields[0] - yields[1]) >= 0.5)
    sentences.push(t('hindsight.yield', { before: yields[0], after: yields[1] }));
  if (before.well && after.well) {
    const leaks = [daysWords(before.well.leak_d), daysWords(after.well.leak_d)] as const;
    if (leaks[0] !== leaks[1]) sentences.push(t('hindsight.leak', { before: leaks[0], after: leaks[1] }));
  }
  if (Math.abs(before.ticks - after.ticks) >= 1800)
    sentences.push(t('hindsight.hours', { before_s: before.ticks, after_s: after.ticks }));
  return sentences;
}

/** How it went on other grounds; null where none could be had. */
export function luckSentence({ points }: Cost, luck: Luck | undefined, done: boolean): string | null {
  const tried = luck?.length ?? 0;
  if (!done && tried < GROUNDS) return t('hindsight.luck.wait');
  if (!luck || tried === 0) return null;
  const n = costsThere(points, luck);
  const kind = n * 4 >= tried * 3 ? 'decision' : n * 4 <= tried ? 'ground' : 'both';
  return `${t('hindsight.luck', { n, all: tried })} ${t(`hindsight.luck.${kind}`)}`;
}
