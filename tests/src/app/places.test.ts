// Addresses: each place has one, and what is none leads to the lost page.
import { expect, it } from 'vitest';
import { addressOf, placeOf, type Place } from '../../../src/app/places';

it('finds every place again by its address', () => {
  const places: Place[] = [
    { name: 'start' },
    { name: 'work' },
    { name: 'debrief' },
    { name: 'runs' },
    { name: 'about' },
    { name: 'help' },
    { name: 'brief', lesson: 'first-rods' },
  ];
  for (const place of places) expect(placeOf(addressOf(place))).toEqual(place);
});

it('takes an empty address for the start', () => {
  for (const hash of ['', '#', '#/']) expect(placeOf(hash)).toEqual({ name: 'start' });
});

it('is lost at what it does not know', () => {
  for (const hash of ['#/x', '#/brief', '#/brief/', '#/brief/A B', '#/brief/a/b', '#/work/1', '#/brief/%3Cb%3E'])
    expect(placeOf(hash)).toEqual({ name: 'lost' });
});
