// Twelve states of the drawing that a driller tells apart at a glance.
import type { FixtureChoice } from '../browser/cutaway/fixture';
import type { WellChoice } from '../browser/cutaway/wellFixture';

export interface State {
  /** What a driller would say of it. */
  readonly says: string;
  readonly view: FixtureChoice;
  readonly well?: WellChoice;
}

export const STATES: readonly State[] = [
  { says: 'drilling, the cuttings come up', view: { washOut: false } },
  { says: 'the pump stands, sand settles at the bottom', view: { flowing: false, washOut: false, bed_m: 0.5 } },
  { says: 'washed out wide at one depth', view: { washOut: true, bed_m: 0.02 } },
  { says: 'the wall is falling', view: { falling: true, bed_m: 0.6 } },
  { says: 'the fluid has gone down in the hole', view: { flowing: false, washOut: false, levelDown_m: 3.2 } },
  { says: 'thick fluid, a skin on the wall', view: { washOut: false, polymer_gL: 2.4, cake_m: 4e-3 } },
  { says: 'the ground drinks the fluid', view: { level: 'open', washOut: false, seep_m2s: 2e-5, pitDown_m: 0.35 } },
  { says: 'blind: nothing of the hole is shown', view: { level: 'blind' } },
  {
    says: 'the casing stands, nothing round it',
    view: { flowing: false, washOut: false },
    well: { look: 'landed', fills: [] },
  },
  {
    says: 'the pack is being poured',
    view: { flowing: false, washOut: false },
    well: { falling: true, fills: [['pack07', 6.5, 8.25]] },
  },
  {
    says: 'the finished well is pumped, the water is drawn down',
    view: { level: 'open', flowing: false, washOut: false },
    well: { drawn_m: 1.6, head: true },
  },
  {
    says: 'a downpour, and one of the two is away',
    view: { washOut: false, sky: 'downpour', crew: { workers: [{ post: 'handle', tool: 'none' }], away: 1 } },
  },
];
