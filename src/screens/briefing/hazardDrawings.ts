// Our own line drawings of the dangers, on a 48 by 48 field: what hurts in the warning colour, people and things in ink.
import type { HazardId } from '$lessons';

export interface HazardDrawing {
  /** People and things. */
  readonly ink: string;
  /** What hurts. */
  readonly danger: string;
}

/** A person standing at x, arms left to each drawing. */
const person = (x: number): string => `M${x} 12a4 4 0 1 0 .01 0M${x} 20v13M${x} 33l-4 11M${x} 33l4 11`;

export const HAZARD_DRAWINGS: Readonly<Record<HazardId, HazardDrawing>> = {
  turningStem: {
    ink: 'M32 2v44M8 20h12c3 0 3 4 0 4h-5v3h-3v3H8z',
    danger: 'M24 10c0-5 16-5 16 0s-16 5-16 0M22 35c0-5 20-5 20 0s-20 5-20 0M24 14l0-5 4 2',
  },
  rods: {
    ink: `${person(10)}${person(38)}M10 24l6-2M38 24l-6-2`,
    danger: 'M2 20h44v4H2zM24 27v9M20 33l4 4 4-4',
  },
  petrol: {
    ink: 'M6 18h20v24H6zM10 18v-6h8v6M26 22l6-4M10 30h12M34 44h10',
    danger: 'M39 42c-6 0-7-6-4-10c1 3 3 2 2-2c-1-5 2-8 4-10c0 5 5 7 5 14c0 5-3 8-7 8z',
  },
  electric: {
    ink: 'M4 28h18l6-4v14l-6-4H4zM12 28v-8h8v8M28 31h8c6 0 6 12 0 12H8',
    danger: 'M36 2l-8 12h7l-4 10l12-14h-8l5-8z',
  },
  pits: {
    ink: `M2 34h12v10h20V34h12M8 34V22M40 34V22M4 26h40M4 30h8M36 30h8`,
    danger: 'M24 4a4 4 0 1 0 .01 0M24 12v8M24 20l-4 6M24 20l4 6M18 15h12',
  },
  powder: {
    ink: 'M24 6c8 0 13 6 13 14c0 10-6 20-13 20S11 30 11 20C11 12 16 6 24 6zM14 26c5-4 15-4 20 0v8H14zM14 26l-4-3M34 26l4-3M18 18h4M26 18h4',
    danger: 'M3 36h2M6 42h2M2 28h2M43 36h2M40 42h2M44 28h2M12 46h2M34 46h2',
  },
  chlorine: {
    ink: 'M14 12h12v6l5 6v20H9V24l5-6zM15 6h10v6H15zM9 30h22',
    danger: 'M37 10v6M34 13h6M41 22v6M38 25h6M16 36l8 5M24 36l-8 5',
  },
  overhead: {
    ink: `${person(14)}M14 24l8-4M14 26l9 2M22 6v40`,
    danger: 'M2 4c14 3 30 3 44 0M2 9c14 3 30 3 44 0M30 10l-4 7h5l-3 7',
  },
  hoses: {
    ink: 'M2 32h14v10H2zM16 37c8 0 6-14 14-14M30 19h6v8h-6z',
    danger: 'M38 20l7-5M39 23h8M38 26l7 5M26 14l-2-6M32 13l1-6',
  },
  water: {
    ink: 'M14 16h20l-3 26H17zM16 26h16M17 30c3-3 5 2 8 0s4-2 6 0M36 4v8M32 8h8',
    danger: 'M6 6l36 38',
  },
  lifting: {
    ink: 'M15 8a4 4 0 1 0 .01 0M15 16l-2 14M13 30l6 5M19 35l-3 9M13 30l-3 14M15 20l10 8M25 24h18v12H25z',
    danger: 'M34 20V8M30 12l4-5 4 5M8 14l-3 14',
  },
  glue: {
    ink: 'M8 18h18v24H8zM8 26h18M13 18v-8h8v8M17 10V3M34 44h10',
    danger:
      'M39 42c-6 0-7-6-4-10c1 3 3 2 2-2c-1-5 2-8 4-10c0 5 5 7 5 14c0 5-3 8-7 8zM28 14c2-2 2-4 0-6M32 12c2-2 2-4 0-6',
  },
  cement: {
    ink: 'M6 14h22v28H6zM6 20h22M10 30h14M32 40l2-12c0-3 4-3 4 0v-4c0-3 4-3 4 0v12c0 5-2 8-6 8z',
    danger: 'M12 8h2M18 5h2M24 9h2M30 6h2M33 13h2',
  },
  lightning: {
    ink: 'M12 18a8 8 0 0 1 3-15c4-3 12-3 14 2c7-1 10 10 3 13z',
    danger: 'M26 20l-8 12h8l-5 13l14-17h-8l5-8z',
  },
};
