// The lessons as the first screens need them: titles, outcomes, briefing, rubric, cautions, with their words. No physics.
import { lessonWords } from '$lessons';
import { addMessages } from '../words';

addMessages(lessonWords);

export {
  askedOf,
  CATEGORY_OF,
  DEPTH_LIMITS_m,
  HAZARD_IDS,
  hazardWords,
  isScored,
  lastPartFrom,
  lessonById,
  LESSONS,
  practiceFor,
  PRACTICES,
  type Asked,
  type Lesson,
  type Sitting,
  type PartShown,
} from '$lessons';
export { DEFAULT_KIT, SETTINGS, type Kit } from '$sim';
