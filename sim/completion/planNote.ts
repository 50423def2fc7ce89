// The remarks that can stand beside a plan, and where each comes from.
import type { WellPlan } from './plan';

/** Where a remark comes from; the words name the publication. */
export type NoteSource =
  | 'ti814'
  | 'walton1962'
  | 'driscoll1986'
  | 'terzaghi1948'
  | 'm288'
  | 'fhwa'
  | 'd5092'
  | 'f480'
  | 'bulletin74'
  | 'ufgs02521'
  | 'epa1975'
  | 'handWells'
  | 'codes'
  | 'practice';

export type NoteKey =
  | 'noSlots'
  | 'entranceFast'
  | 'entranceFastForSand'
  | 'sectionThin'
  | 'workingBreaks'
  | 'collapseNear'
  | 'cementCrushes'
  | 'fillFirst'
  | 'gapBelow50'
  | 'piecesJam'
  | 'packGrainsJam'
  | 'sandNeverStops'
  | 'slotTooFine'
  | 'clothTooOpen'
  | 'clothStandard'
  | 'clothClogs'
  | 'packTooCoarse'
  | 'packTight'
  | 'packRunsOut'
  | 'packLow'
  | 'sealNone'
  | 'sealShallow'
  | 'sealAcrossScreen'
  | 'cementOnPack'
  | 'sealThinOnPack'
  | 'codeDeeper'
  | 'codeWider'
  | 'screenAboveLevel'
  | 'screenNearLevel'
  | 'centralisersFew'
  | 'sumpShort'
  | 'noCap'
  | 'stickUpLow'
  | 'groundNotLogged';

export interface PlanNote {
  readonly note: NoteKey;
  /** The field it stands at. */
  readonly field: keyof WellPlan;
  readonly source: NoteSource;
  /** The figure and what is asked of it, in SI or mm as the field has it; left out where there is none. */
  readonly have?: number;
  readonly want?: number;
  /** Rules that ask for more. */
  readonly rules?: readonly string[];
}
