// The only door to the lessons.

export { atOnce } from './atOnce';
export { LESSONS, lessonById } from './catalogue/index';
export { askedOf, isScored, practiceFor, PRACTICES } from './practices/index';
export { AskedSchema, DEPTH_LIMITS_m, USUAL_ASKED, type Asked } from './practices/asked';
export { checkLesson, LessonSchema, PracticeSchema, type Lesson, type LessonCheck } from './schema';
export { HAMLETS, PLAN_m, SiteSchema, SOURCES, SPOT_IDS, type SitePlan } from './siteSchema';
export { GAUGE_IDS, HAND_GROUPS, SENSE_IDS, VIEW_LEVELS } from './levels';
export { FaultSchema, type FaultId, type LessonFault } from './faultSchema';
export {
  baseOf,
  calibratingPool,
  checkExercise,
  classCodeOf,
  EXERCISE_FORMAT,
  EXERCISE_FORMAT_VERSION,
  EXERCISE_LIMIT,
  exerciseFragment,
  exerciseHash,
  exerciseTooLarge,
  ExerciseSchema,
  lessonOfExercise,
  linting,
  MOST_SEEDS,
  newExercise,
  pack,
  packExercise,
  readExercise,
  unpack,
  variantSeed,
  writeExercise,
  type Exercise,
  type ExerciseCheck,
  type ExerciseLayer,
  type ExerciseProblem,
  type ExerciseProblemKey,
  type Finding,
  type Level,
  type LintKey,
  type LintReport,
  type LintStep,
  type Place,
  type Pool,
  type PoolStep,
  type PoolWanted,
  type ReadExercise,
} from './exercises/index';
export { scenarioOf } from './scenario';
export { endsAtStop, isOver, outcomeOf } from './over';
export { grade, judge, scoreOf, viewOf, type Grade, type GradedItem } from './grade';
export { CATEGORY_IDS, CATEGORY_OF, ITEM_IDS, type CategoryId, type ItemId } from './rubric/ids';
export type { Evidence, Judged, RunView } from './rubric/item';
export { ITEMS } from './rubric/index';
export { fittingNames } from './rubric/grains';
export {
  CONTENTS,
  DRILL_IDS,
  LESSON_ORDER,
  PRACTICE_IDS,
  WHOLE_WELL_IDS,
  type DrillId,
  type LessonId,
} from './contents';
export { DRILL_OF, LEARNT_frac, nextLesson, shownIn, type NextLesson, type Shown } from './drills';
export { contents as contentsWords } from './words/en/contents';
export { HAZARD_IDS, hazardWords, type HazardId } from './hazards';
export { coachingCard } from './coaching';
export { CREWS, createCrew, isCrewName, WORKING_CREWS } from './crews/index';
export { takeOver } from './handing/takeOver';
export type { Crew, Deed, Job } from './crews/crew';
export { crewActs, crewFor, playCrew, playing, playOn, restCrew } from './play';
export { jobFor, jobOf } from './job';
export { openStart, startRun, type Start } from './start';
export { seatOf, seatsOf, sharesOf, type Seats, type Share } from './turns';
export { entriesBefore, ownEntries, ownEvents, startTick } from './own';
export {
  lessonOf,
  readRunFile,
  runFileOf,
  tooLarge,
  writeRunFile,
  RUN_FILE_LIMIT,
  RUN_FORMAT,
  RUN_FORMAT_VERSION,
  type About,
  type Problem,
  type ProblemKey,
  type ReadRunFile,
  type RunFile,
  type Sitting,
} from './runfile';
export { replayFile, replaying, type Replayed } from './replayFile';
export {
  boardOf,
  joinParts,
  judging,
  MOST_PARTS,
  packResult,
  partOf,
  readResult,
  RESULT_FORMAT,
  RESULT_FORMAT_VERSION,
  RESULT_LIMIT,
  resultOf,
  resultParts,
  VERDICTS,
  writeResult,
  type AboutResult,
  type Board,
  type BoardRow,
  type Joined,
  type JudgedResult,
  type Judgement,
  type Lost,
  type PartOf,
  type ReadResult,
  type Result,
  type ResultProblem,
  type ResultProblemKey,
  type Verdict as ResultVerdict,
} from './results/index';
export { en as lessonWords, fillSlots, format, isWordKey, type Said, type WordData, type WordKey } from './words/index';
export { recordOf, type AboutRecord } from './record/recordOf';
export { csvCell, CSV_COLUMNS, writeRecordCsv, writeRecordJson } from './record/csv';
export {
  BLANK_SHEET,
  RECORD_FORMAT,
  RECORD_FORMAT_VERSION,
  type FillEntry,
  type RecordSheet,
  type TestEntry,
} from './record/sheet';
export {
  costElsewhere,
  complete,
  costsOf,
  costsThere,
  dearest,
  elsewhere,
  GROUNDS,
  joinedGround,
  lastBefore,
  MarkBook,
  markOf,
  marksAlong,
  momentsOf,
  MOST_STRETCHES,
  nextIndex,
  runAtMark,
  settled,
  valueAt,
  valueOf,
  valuing,
  type Cost,
  type Luck,
  type Mark,
  type Moment,
  type Past,
  type ShortItem,
  type Value,
} from './hindsight/index';
export { whyOf } from './examples/why';
export { lastPartFrom } from './examples/lastPart';
export { openExample, type Example, type PartShown } from './examples/example';
