// The only door of sim: what lessons, the screens and the tests may use.

export { CAUSES as WALL_CAUSES, type Cause as WallCause } from './hole/wall/failures';
export { SIM_VERSION } from './run/version';
export * from './run/names';
export {
  ACTION_SPECS,
  COLOUR_WORDS,
  FEEL_WORDS_OF_GROUND,
  RECORD_FIELDS,
  SEAT_WORDS,
  WAIT_WORDS,
  type ActionSpec,
  type FieldSpec,
  type RecordField,
  type SeatWord,
} from './run/actions';
export { malformedIn, type FieldProblem, type Malformed, type Payload } from './run/check';
export type { LogEntry } from './run/log';
export { act, canAct, type ActResult } from './run/act';
export { FAULT, FAULT_NAMES, MEND_WORDS, type FaultName, type MendWord } from './materials/faults';
export { COME as FAULT_COME } from './run/faultState';
export type { FaultFigures, FaultMoment, FaultState, ScheduledFault } from './run/faultState';
export type { Opening, Scenario, Shower, Weather, WellKit, WorkingDay } from './run/scenario';
export { groundAt, groundOf } from './run/ground';
export type { OwnLayer, Relief, RunState, Sample, StemState, Task, Wait } from './run/state';
export { createRun, type Run } from './run/run';
export { step } from './run/step';
export { playingLog, playLog, replayRun } from './run/replay';
export { hashRun, restoreRun, snapshotOf, type Snapshot } from './run/snapshot';
export { restoreToLookAt } from './run/lookAt';
export { createTrail, cutTrail, layMark, runAt, trailOf, TRAIL_STEP_s, type Trail, type TrailMark } from './run/trail';
export { ledgerOf, type Ledger } from './run/ledger';
export { costOf } from './run/cost';
export { verdictOf } from './run/verdict';
export { planBoard, type PlanBoard } from './run/planBoard';
export type { PlanProblem, PlanProblemKey } from './completion/planCheck';
export type { PlanFigures } from './completion/planFigures';
export type { NoteKey, NoteSource, PlanNote } from './completion/planNote';
export { CASING_NAMES, CASINGS, PVC, type Casing, type CasingName } from './materials/pipes';
export { CLOTH_NAMES, CLOTHS, type ClothName } from './materials/cloths';
export { PACK_NAMES, PACKS, type PackName } from './materials/packs';
export { SEAL_NAMES, SEALS, type SealName } from './materials/seals';
export { WELL_PUMP_NAMES, WELL_PUMPS, type WellPumpName } from './materials/wellPumps';
export { DRILLING_PUMP_NAMES, DRILLING_PUMPS, BITS_m, type DrillingPumpName } from './materials/drillingPumps';
export { HIDDEN_EVENTS } from './run/names';
export {
  TRACE_COLUMNS,
  TRACE_STEP_s,
  WELL_TRACE_COLUMNS,
  WELL_TRACE_STEP_s,
  createRecord,
  lengthOf,
  recordUpTo,
  type RecordLength,
  type RunEvent,
  type RunRecord,
  type Trace,
  type TraceColumn,
  type WellTrace,
  type WellTraceColumn,
} from './run/record';
export {
  sensesOf,
  type Amount,
  type DriveFeel,
  type GrainGlance,
  type PullFeel,
  type PumpSound,
  type Senses,
  type StemSound,
  type TorqueFeel,
} from './run/senses';
export { skyLook, type HeapLook, type HoseLook, type MouthLook, type PitLook, type SkyLook } from './run/looks';
export { handsThere } from './run/hands';
export type { TraySample } from './run/traySenses';
export type { JarLook, TestReading, WellWater } from './run/wellWater';
export { LONGEST_d, type LiftVerdict, type Verdict, type YieldLimit } from './well/verdict';
export type { TestRow, TestStop, WellTest } from './well/wellTest';
export type { Disinfection, HeadWorks, Jar, WellState } from './well/wellState';
export type { ScreenRing } from './well/ring';
export type { CasingSenses, WellSenses } from './run/wellSenses';
export { jobOver } from './run/jobOver';
export type { CompletionState, PlacedSeal } from './completion/completion';
export type { AnnulusState } from './completion/annulus';
export type { CasingLook, CasingState } from './completion/casing';
export { FILL_NAMES, GROUND_FILL, type FillName } from './completion/fills';
export { casingLength_m, shoe_m, type WellPlan } from './completion/plan';
export { drillingMachine, MACHINE_EVENTS, type MachineEvent, type MachineValue } from './machine/machine';
export { CAUSES, type Cause } from './hole/wall/failures';
export { bedHeight_m, buried_m, fluidLevel_m, type HoleState } from './hole/hole';
export { floorRise_m, levelBelowRim_m } from './pit/level';
export type { Chamber, PitState } from './pit/pit';
export { held_frac, PACK_HELD_frac } from './completion/packFit';
export { passing_frac, staysLoose_frac, type Barrier } from './completion/passing';
export { entrance_ms, openPerMetre_m } from './completion/slots';
export { HAND_PUMP_M3S } from './well/need';
export type { Gradation } from './ground/gradation';
export { DEFAULT_KIT, type Kit } from './materials/kit';
export { SITE_RULE_m } from './materials/siteRules';
export { POLYMER } from './materials/polymer';
export { ADDITIVE_NAMES, type AdditiveName } from './materials/additives';
export { BENTONITE, CHLORINE, SALT, SOAKED, SOAKING, SUBSTANCE_COUNT, SUBSTANCES, SWELLING } from './fluid/substances';
export {
  CLASS_COUNT,
  FINE_CLASS_COUNT,
  FIRST_VISIBLE_CLASS,
  SIZE_CLASSES,
  type SizeClass,
  type SizeId,
} from './materials/sizes';
export { SOILS, SOIL_KINDS, type SoilKind } from './materials/soils';
export { layerAt } from './ground/lookup';
export { variedLayer } from './ground/vary';
export { buildGround, ground, type GroundRecipe } from './ground/generate';
export { SETTINGS, type SettingId } from './ground/settings';
export { GROUND_VERSION } from './ground/ground';
export type { Contamination, Ground, Head, NeighbourWell, Place, Site, Spot } from './ground/ground';
export type { Layer } from './ground/layer';
export { hashOf } from './numeric/hash';
export { createStream, restoreStream, type Stream, type StreamState } from './numeric/stream';
