// The fixed ids: categories of a score, and items with the category each belongs to.

export const CATEGORY_IDS = ['additives', 'screen', 'seal', 'hole', 'log', 'safety', 'economy'] as const;
export type CategoryId = (typeof CATEGORY_IDS)[number];

export const ITEM_IDS = [
  'clearedStops',
  'notBuried',
  'fairFeed',
  'depthReached',
  'sampleEachRod',
  'labelsTrue',
  'namedRight',
  'fluidReady',
  'notTooThick',
  'noFishEyes',
  'jobTime',
  'suppliesUsed',
  'cautionsRead',
  'rodsHandledStill',
  'liftedBeforeStop',
] as const;
export type ItemId = (typeof ITEM_IDS)[number];

export const CATEGORY_OF: Readonly<Record<ItemId, CategoryId>> = {
  clearedStops: 'hole',
  notBuried: 'hole',
  fairFeed: 'hole',
  depthReached: 'hole',
  sampleEachRod: 'log',
  labelsTrue: 'log',
  namedRight: 'log',
  fluidReady: 'additives',
  notTooThick: 'additives',
  noFishEyes: 'additives',
  jobTime: 'economy',
  suppliesUsed: 'economy',
  cautionsRead: 'safety',
  rodsHandledStill: 'safety',
  liftedBeforeStop: 'safety',
};
