// The messages that the first screen does not need: they come with the playing part.
import { board } from './en/board';
import { cutaway } from './en/cutaway';
import { debrief } from './en/debrief';
import { events } from './en/events';
import { hindsight } from './en/hindsight';
import { glossary } from './en/glossary';
import { record } from './en/record';
import { site } from './en/site';
import { wellVerdict } from './en/wellVerdict';
import { work } from './en/work';

export const laterMessages = {
  ...debrief,
  ...events,
  ...hindsight,
  ...glossary,
  ...record,
  ...wellVerdict,
  ...work,
  ...cutaway,
  ...site,
  ...board,
};
