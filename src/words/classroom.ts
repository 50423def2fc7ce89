// The messages of the class: for instructors, and for whoever plays an exercise. They come with the first of those screens.
import { classroom } from './en/classroom';
import { codes } from './en/codes';
import { editor } from './en/editor';
import { live } from './en/live';
import { papers } from './en/papers';
import { results } from './en/results';

export const classMessages = { ...classroom, ...codes, ...editor, ...live, ...papers, ...results };
