// Every deed by the name of its act. An act without an entry only leaves its mark in the log.

import type { ActionName } from '../names';
import { bookDeeds } from './book';
import { annulusDeeds } from './annulus';
import { casingDeeds } from './casing';
import { crewDeeds } from './crew';
import type { Deed, Deeds } from './deed';
import { fluidDeeds } from './fluid';
import { pitDeeds } from './pit';
import { mendDeeds } from './mend';
import { planDeeds } from './plan';
import { pullingDeeds } from './pulling';
import { pumpDeeds } from './pump';
import { siteDeeds } from './site';
import { developDeeds } from './develop';
import { finishDeeds } from './finish';
import { stemDeeds } from './stem';
import { testDeeds } from './test';
import { trayDeeds } from './tray';

const DEEDS: Deeds = {
  ...stemDeeds,
  ...pumpDeeds,
  ...pitDeeds,
  ...fluidDeeds,
  ...trayDeeds,
  ...bookDeeds,
  ...crewDeeds,
  ...mendDeeds,
  ...planDeeds,
  ...pullingDeeds,
  ...casingDeeds,
  ...annulusDeeds,
  ...siteDeeds,
  ...developDeeds,
  ...testDeeds,
  ...finishDeeds,
};
const NOTHING: Deed = {};

export function deedOf(action: ActionName): Deed {
  return DEEDS[action] ?? NOTHING;
}
