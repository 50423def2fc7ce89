// Layout and clock: what fits where, and how time is written.
import { describe, expect, it } from 'vitest';
import { clockParts } from '../../../src/screens/work/clock';
import { formFor } from '../../../src/screens/work/form';

describe('the form of the work screen', () => {
  it('shows all hands at once on a desktop, by tabs on a phone', () => {
    expect(formFor(1280, 800, 16)).toBe('roomy');
    expect(formFor(390, 844, 16)).toBe('stacked');
    expect(formFor(320, 640, 16)).toBe('stacked');
    expect(formFor(844, 390, 16)).toBe('beside');
  });

  it('counts text of double size as half the room', () => {
    expect(formFor(1280, 800, 32)).toBe('beside');
    expect(formFor(844, 390, 32)).toBe('stacked');
  });
});

describe('the job clock', () => {
  it('is written in hours, minutes and seconds', () => {
    expect(clockParts(0)).toEqual({ h: '0', min: '00', s: '00' });
    expect(clockParts(3849)).toEqual({ h: '1', min: '04', s: '09' });
  });
});
