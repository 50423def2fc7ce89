// The well as it was built, for the section: where the pipe stands and what stands round it.
import type { HatchName } from './hatches';

export interface BuiltFill {
  readonly from_m: number;
  readonly to_m: number;
  /** null: a void. */
  readonly hatch: HatchName | null;
  /** Its name as a message. */
  readonly word: string;
}

export interface BuiltWell {
  readonly bottom_m: number;
  readonly top_m: number;
  readonly shoe_m: number;
  /** Width of the pipe as a share of that of the bit. */
  readonly pipe_frac: number;
  readonly cap: boolean;
  readonly snapped: boolean;
  readonly screen: { readonly from_m: number; readonly to_m: number } | null;
  readonly fills: readonly BuiltFill[];
  /** Water at rest now and in the driest month. */
  readonly rest_m: number | null;
  readonly dry_m: number | null;
}
