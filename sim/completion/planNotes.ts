// Remarks on a plan: what handbooks and codes say against it. They hold nobody up; local code decides.
import { CLOTHS } from '../materials/cloths';
import { PACKS } from '../materials/packs';
import { SEALS } from '../materials/seals';
import { largestPiece_mm } from './bridging';
import { clothFines_frac, clothLeft_frac, standardCloth, widestCloth_mm } from './cloth';
import { COLLAPSE_SAFETY_ratio } from './collapse';
import { naturalFit } from './naturalFit';
import { PACK_HELD_frac } from './packFit';
import type { WellPlan } from './plan';
import type { NoteKey, NoteSource, PlanNote } from './planNote';
import type { PlanFacts } from './planFacts';
import type { PlanFigures } from './planFigures';
import { DEPTH_RULES, GAP_RULES, HAND_WELL_SEAL_m, ON_PACK_RULES, stricterThan } from './sealRules';
import { ENTRANCE_LIMIT_ms } from './slots';

/** Gap in which stuff can be placed, m: 2 in (ASTM D5092; California Bulletin 74-90). */
const PLACING_GAP_m = 0.05;
/** Pack above the screen, m: .6 to 1 at least (ASTM D5092 and practice, from memory): it settles in development. */
const PACK_ABOVE_m = 0.6;
/** Sump, m: .5 to 1 is common practice, no source. */
const SUMP_m = 0.5;
/** Casing above the ground, m: 12 in (EPA-570/9-75-001 via a US Navy manual). */
const STICK_UP_m = 0.3;
/** Blank casing below the lowest level, m: 5 ft (TI 814-01). */
const BELOW_LEVEL_m = 1.5;
/** Casing between centralisers, m: 3 to 6 (Driscoll, state rules; from memory). */
const CENTRALISER_EVERY_m = 6;
/** Section at the slots below which a remark is due, share. ASSUMED: half the pipe. */
const SECTION_frac = 0.5;
/** Flow left to a cloth below which a remark is due, share. ASSUMED: half. */
const CLOTH_LEFT_frac = 0.5;

type Add = (
  when: boolean,
  note: NoteKey,
  field: keyof WellPlan,
  source: NoteSource,
  have?: number,
  want?: number,
  rules?: readonly string[],
) => void;

function pipeNotes(add: Add, plan: WellPlan, { pipe, screen, gap_m, amounts }: PlanFigures): void {
  const section_frac = screen.sectionLeft_frac;
  add(section_frac < SECTION_frac, 'sectionThin', 'slotArc_mm', 'practice', section_frac, SECTION_frac);
  add(pipe.working_ratio < 1, 'workingBreaks', 'slotArc_mm', 'practice', pipe.working_ratio, 1);
  const safety_ratio = COLLAPSE_SAFETY_ratio;
  add(pipe.collapse_ratio < safety_ratio, 'collapseNear', 'casing', 'f480', pipe.collapse_ratio, safety_ratio);
  const cement_m = plan.sealTo_m - plan.sealFrom_m;
  add(pipe.cementEmpty_m < safety_ratio * cement_m, 'cementCrushes', 'casing', 'f480', cement_m, pipe.cementEmpty_m);
  add(plan.cap && pipe.lift_kg > 0, 'fillFirst', 'cap', 'practice', pipe.lift_kg, 0);
  add(!plan.cap, 'noCap', 'cap', 'practice');
  add(plan.sump_m < SUMP_m, 'sumpShort', 'sump_m', 'practice', plan.sump_m, SUMP_m);
  add(plan.stickUp_m < STICK_UP_m, 'stickUpLow', 'stickUp_m', 'epa1975', plan.stickUp_m, STICK_UP_m);
  add(gap_m < PLACING_GAP_m, 'gapBelow50', 'casing', 'd5092', gap_m, PLACING_GAP_m);
  const centralisers = Math.ceil(pipe.shoe_m / CENTRALISER_EVERY_m);
  add(
    plan.centralisers < centralisers,
    'centralisersFew',
    'centralisers',
    'driscoll1986',
    plan.centralisers,
    centralisers,
  );
  const grain_mm = plan.pack === 'none' ? 0 : PACKS[plan.pack].to_mm;
  const most_mm = largestPiece_mm(gap_m);
  add(amounts.pack_m3 > 0 && grain_mm > most_mm, 'packGrainsJam', 'pack', 'bulletin74', grain_mm, most_mm);
}

function screenNotes(add: Add, plan: WellPlan, { screen }: PlanFigures, { lowest_m }: PlanFacts): void {
  const open = screen.openArea_m2 > 0;
  add(!open, 'noSlots', 'slotRows', 'practice');
  const { entrance_ms } = screen;
  add(
    open && entrance_ms > ENTRANCE_LIMIT_ms,
    'entranceFast',
    'slotSpacing_mm',
    'ti814',
    entrance_ms,
    ENTRANCE_LIMIT_ms,
  );
  const allowed_ms = screen.entranceFor_ms ?? ENTRANCE_LIMIT_ms;
  add(
    open && entrance_ms > allowed_ms && entrance_ms <= ENTRANCE_LIMIT_ms,
    'entranceFastForSand',
    'slotSpacing_mm',
    'walton1962',
    entrance_ms,
    allowed_ms,
  );
  if (lowest_m === null) return;
  const blank_m = plan.screenFrom_m - lowest_m;
  add(blank_m < 0, 'screenAboveLevel', 'screenFrom_m', 'ti814', plan.screenFrom_m, lowest_m);
  add(
    blank_m >= 0 && blank_m < BELOW_LEVEL_m,
    'screenNearLevel',
    'screenFrom_m',
    'ti814',
    plan.screenFrom_m,
    lowest_m + BELOW_LEVEL_m,
  );
}

function sandNotes(add: Add, plan: WellPlan, { screen }: PlanFigures): void {
  const { finest, packFit } = screen;
  add(finest === null, 'groundNotLogged', 'screenFrom_m', 'practice');
  const held_frac = screen.packHeld_frac ?? 1;
  add(held_frac < PACK_HELD_frac, 'packRunsOut', 'slotWidth_mm', 'ti814', held_frac, PACK_HELD_frac);
  if (finest === null) return;
  add((screen.loose_frac ?? 0) > 0, 'sandNeverStops', 'slotWidth_mm', 'driscoll1986', screen.loose_frac ?? 0, 0);
  if (plan.cloth !== 'none') {
    const cloth = CLOTHS[plan.cloth];
    const widest_mm = widestCloth_mm(finest);
    add(cloth.O95_mm > widest_mm && !packFit, 'clothTooOpen', 'cloth', 'fhwa', cloth.O95_mm, widest_mm);
    const left_frac = clothLeft_frac(cloth, packFit && plan.pack !== 'none' ? PACKS[plan.pack] : finest);
    add(left_frac < CLOTH_LEFT_frac, 'clothClogs', 'cloth', 'practice', left_frac, CLOTH_LEFT_frac);
    const asked = standardCloth(clothFines_frac(finest));
    const short = cloth.permittivity_1s < asked.permittivity_1s;
    add(short, 'clothStandard', 'cloth', 'm288', cloth.permittivity_1s, asked.permittivity_1s);
  } else if (!packFit) {
    const { from_mm } = naturalFit(finest);
    add(plan.slotWidth_mm < from_mm, 'slotTooFine', 'slotWidth_mm', 'driscoll1986', plan.slotWidth_mm, from_mm);
  }
  if (!packFit) return;
  const coarse = packFit.word === 'coarse' || packFit.word === 'sandPasses';
  add(coarse, 'packTooCoarse', 'pack', 'driscoll1986', packFit.d30_mm, packFit.wanted_mm);
  add(packFit.word === 'tight', 'packTight', 'pack', 'driscoll1986', packFit.d30_mm, packFit.wanted_mm);
}

function sealNotes(add: Add, plan: WellPlan, { sealGap_m }: PlanFigures): void {
  const packed = plan.pack !== 'none';
  const above_m = plan.screenFrom_m - plan.packTop_m;
  add(packed && above_m < PACK_ABOVE_m, 'packLow', 'packTop_m', 'd5092', above_m, PACK_ABOVE_m);
  add(plan.seal === 'none', 'sealNone', 'seal', 'handWells', 0, HAND_WELL_SEAL_m);
  if (plan.seal === 'none') return;
  const { sealFrom_m, sealTo_m } = plan;
  const { piece_mm, entersPack } = SEALS[plan.seal];
  const most_mm = largestPiece_mm(sealGap_m);
  add(sealTo_m < HAND_WELL_SEAL_m, 'sealShallow', 'sealTo_m', 'handWells', sealTo_m, HAND_WELL_SEAL_m);
  add(sealTo_m > plan.screenFrom_m, 'sealAcrossScreen', 'sealTo_m', 'practice', sealTo_m, plan.screenFrom_m);
  add(piece_mm > most_mm, 'piecesJam', 'seal', 'bulletin74', piece_mm, most_mm);
  const onPack = packed && sealTo_m >= plan.packTop_m;
  const [least] = ON_PACK_RULES;
  add(onPack && entersPack, 'cementOnPack', 'seal', 'practice', 0, least.least_m);
  const thick_m = sealTo_m - sealFrom_m;
  const thicker = stricterThan(ON_PACK_RULES, thick_m);
  const ids = (rules: readonly { id: string }[]): string[] => rules.map(({ id }) => id);
  add(
    packed && !entersPack && thicker.length > 0,
    'sealThinOnPack',
    'sealFrom_m',
    'd5092',
    thick_m,
    least.least_m,
    ids(thicker),
  );
  const deeper = stricterThan(DEPTH_RULES, sealTo_m);
  add(deeper.length > 0, 'codeDeeper', 'sealTo_m', 'codes', sealTo_m, deeper.at(-1)?.least_m, ids(deeper));
  const wider = stricterThan(GAP_RULES, sealGap_m);
  add(wider.length > 0, 'codeWider', 'seal', 'codes', sealGap_m, wider.at(-1)?.least_m, ids(wider));
}

/** Remarks on a plan that can be tried: pipe, screen, sand, seal. Where codes are stricter the local code decides. */
export function planNotes(plan: WellPlan, figures: PlanFigures, facts: PlanFacts): PlanNote[] {
  const notes: PlanNote[] = [];
  const add: Add = (when, note, field, source, have, want, rules) => {
    if (when) notes.push({ note, field, source, have, want, rules });
  };
  pipeNotes(add, plan, figures);
  screenNotes(add, plan, figures, facts);
  sandNotes(add, plan, figures);
  sealNotes(add, plan, figures);
  return notes;
}
