// The pictures that learners choose from, drawn as strokes on a square of 24 units.

export const PICTURES = {
  bucket: 'M5 9h14l-2 12H7zM5 9c0-8 14-8 14 0',
  fish: 'M3 12c4-7 10-7 14 0c-4 7-10 7-14 0zM17 12l4-4v8zM8 10.5v1',
  tree: 'M12 21v-7M12 4a5.5 5.5 0 1 0 .1 0zM12 17l3-3',
  boat: 'M3 15h18l-3 5H6zM12 15V4l6 8h-6',
  sun: 'M12 8a4 4 0 1 0 .1 0zM12 2v3M12 19v3M2 12h3M19 12h3M5 5l2 2M17 17l2 2M19 5l-2 2M7 17l-2 2',
  moon: 'M14 3a9 9 0 1 0 7 12a8 8 0 0 1-7-12z',
  house: 'M4 11l8-7 8 7v9H4zM10 20v-6h4v6',
  leaf: 'M5 19C4 9 10 4 20 4c0 10-5 16-15 15zM5 19l9-9',
  pot: 'M8 4h8M9 4v3C5 9 4 12 4 14c0 4 4 6 8 6s8-2 8-6c0-2-1-5-5-7V4',
  star: 'M12 3l2.7 6 6.3.6-4.8 4.3 1.4 6.4L12 17l-5.6 3.3 1.4-6.4L3 9.600l6.300-.6z',
  hill: 'M2 19l7-12 5 8 3-4 5 8z',
  drum: 'M5 7c0-4 14-4 14 0s-14 4-14 0zl2 11c0 4 10 4 10 0l2-11M6 13l12 0',
} as const;

export type PictureName = keyof typeof PICTURES;
export const PICTURE_NAMES = Object.keys(PICTURES) as PictureName[];

export function isPicture(id: string): id is PictureName {
  return Object.hasOwn(PICTURES, id);
}
