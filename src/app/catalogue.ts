// The lessons as the first screens need them: titles, outcomes, briefing, rubric, cautions, with their words. No physics.
import { lessonWords } from '$lessons';
import { addMessages } from '../words';

addMessages(lessonWords);

export { CATEGORY_OF, HAZARD_IDS, hazardWords, lessonById, LESSONS, type Lesson } from '$lessons';
export { DEFAULT_KIT, type Kit } from '$sim';
