// The rubric of a lesson by category, the weightiest first.
import { CATEGORY_OF, type Lesson } from '../../app/catalogue';

type Item = Lesson['rubric'][number];

export interface Category {
  readonly id: string;
  readonly weight: number;
  readonly items: readonly Item[];
}

export function categoriesOf(lesson: Lesson): Category[] {
  const ids = [...new Set(lesson.rubric.map((item) => CATEGORY_OF[item.item]))];
  return ids
    .map((id) => {
      const items = lesson.rubric.filter((item) => CATEGORY_OF[item.item] === id);
      return { id, items, weight: items.reduce((sum, item) => sum + item.weight, 0) };
    })
    .sort((a, b) => b.weight - a.weight);
}
