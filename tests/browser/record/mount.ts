// Puts the page of a record, by itself, into an empty page: for records that no lesson makes.
import { mount } from 'svelte';
import { BLANK_SHEET, type RecordSheet } from '../../../lessons';
import Sheet from '../../../src/record/Sheet.svelte';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

export { BLANK_SHEET };

export function show(sheet: RecordSheet): void {
  document.body.replaceChildren();
  mount(Sheet, { target: document.body, props: { sheet, lesson: 'app.name' } });
}
