// Brings the words of the class. Every screen of it imports this first.
import { lessonWords } from '$lessons';
import { addMessages } from '../words';
import { classMessages } from '../words/classroom';

addMessages(classMessages);
addMessages(lessonWords);
