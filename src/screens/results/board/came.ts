// What came to the board from outside, as texts: files, photos of QR codes. What cannot be read is named with its reason; nothing throws.
import { RESULT_LIMIT } from '$lessons';
import type { MessageKey, SlotData } from '../../../words';

export interface Came {
  readonly texts: readonly { readonly from: string; readonly text: string }[];
  readonly unread: readonly { readonly from: string; readonly key: MessageKey; readonly data: SlotData }[];
}

type One = Pick<Came, 'texts' | 'unread'>;
const unread = (from: string, key: MessageKey, data: SlotData = {}): One => ({
  texts: [],
  unread: [{ from, key, data }],
});

const joined = (all: readonly One[]): Came => ({
  texts: all.flatMap(({ texts }) => texts),
  unread: all.flatMap((one) => one.unread),
});

async function textOf(file: File): Promise<One> {
  // By its size, before it is read: a large file would stop a phone.
  if (file.size > RESULT_LIMIT)
    return unread(file.name, 'results.take.tooLarge', { size: file.size, most: RESULT_LIMIT });
  try {
    return { texts: [{ from: file.name, text: await file.text() }], unread: [] };
  } catch {
    return unread(file.name, 'results.take.unreadable');
  }
}

async function codesIn(file: File): Promise<One> {
  const { readPhoto } = await import('../../../classroom/qr/readPhoto');
  const found = await readPhoto(file);
  if (found.length === 0) return unread(file.name, 'results.take.noCode');
  return { texts: found.map((text) => ({ from: file.name, text })), unread: [] };
}

/** Files of any sort: what is a picture is looked at for codes. */
export const textsOf = async (files: readonly File[]): Promise<Came> =>
  joined(await Promise.all(files.map((file) => (file.type.startsWith('image/') ? codesIn(file) : textOf(file)))));

export const codesOf = async (files: readonly File[]): Promise<Came> => {
  const all: One[] = [];
  // One after the other: each picture takes much memory.
  for (const file of files) all.push(await codesIn(file));
  return joined(all);
};
