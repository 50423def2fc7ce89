// How a learner is called: by the picture's word, or as T-07.
import { isPicture } from './pictures';
import { t } from '../words';

/** The id is what run files carry; files from elsewhere may carry any short text. */
export function whoWords(id: string): string {
  if (id.trim() === '') return t('who.unnamed');
  if (isPicture(id)) return t(`picture.${id}`);
  const number = /^T-(\d{2,3})$/.exec(id);
  return number ? t('who.numbered', { n: number[1]! }) : id;
}

/** The id of a number from 1 to 999, or null. */
export function numberedId(text: string): string | null {
  const trimmed = text.trim();
  if (!/^\d{1,3}$/.test(trimmed) || Number(trimmed) === 0) return null;
  return `T-${String(Number(trimmed)).padStart(2, '0')}`;
}
