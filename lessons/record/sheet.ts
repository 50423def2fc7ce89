// The driller's record as plain data: what a crew knows of its own hole and well, and nothing else. What it does not know is null or missing.

import type {
  AdditiveName,
  CasingName,
  ClothName,
  ColourWord,
  EventName,
  KindWord,
  PackName,
  RecordField,
  SealName,
  TestStop,
  WellPumpName,
} from '$sim';

export const RECORD_FORMAT = 'hand-jetting-record';
export const RECORD_FORMAT_VERSION = 1;

export interface LayerEntry {
  readonly from_m: number;
  readonly to_m: number;
  readonly kind: KindWord;
  /** As the samples from it were named. */
  readonly secondary: readonly KindWord[];
  readonly colours: readonly ColourWord[];
  readonly feels: readonly string[];
  readonly samples: readonly number[];
}

export interface SampleEntry {
  readonly sample: number;
  readonly depth_m: number;
  /** null: not named. */
  readonly main: KindWord | null;
  readonly secondary: KindWord | null;
  readonly colour: ColourWord | null;
  readonly feel: string | null;
}

export interface RodEntry {
  readonly rod: number;
  readonly to_m: number;
  /** From the start of the rod to the start of the next. */
  readonly time_s: number;
}

/** Something the crew noticed on the way down: lost returns, a tight or buried stem. */
export interface NoticedEntry {
  readonly time_s: number;
  readonly event: EventName;
  readonly depth_m: number;
}

export interface CasingEntry {
  readonly kind: CasingName;
  readonly outside_mm: number;
  readonly wall_mm: number;
  readonly joint: 'solvent';
  readonly length_m: number;
  readonly pieces: number;
  readonly stickUp_m: number;
  /** Lower end of the pipe. */
  readonly shoe_m: number;
  readonly cap: boolean;
  readonly centralisers: number;
}

export interface ScreenEntry {
  readonly from_m: number;
  readonly to_m: number;
  /** Blank pipe below it. */
  readonly sump_m: number;
  readonly slotWidth_mm: number;
  readonly slotRows: number;
  readonly slotArc_mm: number;
  readonly slotSpacing_mm: number;
  readonly cloth: ClothName | 'none';
}

/** What was put round the casing, from below upwards. */
export interface FillEntry {
  readonly use: 'pack' | 'seal' | 'backfill';
  readonly material: PackName | SealName;
  readonly volume_L: number;
  /** Its top and bottom where they were sounded; null: nobody sounded. */
  readonly from_m: number | null;
  readonly to_m: number | null;
}

export interface DepthReading {
  readonly time_s: number;
  readonly depth_m: number;
}

export interface DevelopmentEntry {
  readonly method: string;
  readonly time_s: number;
}

export interface DoseEntry {
  readonly dose_mgL: number;
  readonly contact_s: number;
}

export interface TestEntry {
  readonly lift: WellPumpName;
  readonly rows: readonly { readonly time_s: number; readonly rate_Lmin: number; readonly level_m: number }[];
  readonly static_m: number;
  readonly lowest_m: number;
  readonly recovered_m: number | null;
  /** Last rate over the draw-down it made, (L/min)/m; null where it made none or was broken off. */
  readonly perMetre_Lminm: number | null;
  readonly brokenOff: TestStop | null;
}

export interface RecordSheet {
  readonly format: typeof RECORD_FORMAT;
  readonly version: typeof RECORD_FORMAT_VERSION;
  /** A hole of the trainer: nothing of it is in the ground. Only a blank form for a real hole is not. */
  readonly simulated: boolean;
  readonly sim: string;
  readonly lesson: string;
  readonly seed: number;
  readonly who: string;
  /** Day on which the run was begun, ISO 8601; null: not known. */
  readonly begun: string | null;
  /** What the crew wrote in by hand. */
  readonly written: Readonly<Partial<Record<RecordField, string>>>;
  /** Job seconds at which things were done; null: not done. */
  readonly done_s: {
    readonly drilled: number | null;
    readonly cased: number | null;
    readonly developed: number | null;
    readonly tested: number | null;
    readonly handedOver: number | null;
  };
  /** Seconds on the job in all. */
  readonly time_s: number;
  readonly cost_marks: number;
  readonly hole: {
    readonly depth_m: number;
    readonly bit_mm: number;
    readonly rods: number;
    readonly rodLength_m: number;
    readonly crew: number;
    readonly water_L: number;
    readonly flush: readonly { readonly additive: AdditiveName; readonly mass_kg: number }[];
    /** Depths of the holes given up before this one. */
    readonly givenUp_m: readonly number[];
  } | null;
  readonly layers: readonly LayerEntry[];
  readonly samples: readonly SampleEntry[];
  readonly rods: readonly RodEntry[];
  readonly noticed: readonly NoticedEntry[];
  readonly casing: CasingEntry | null;
  readonly screen: ScreenEntry | null;
  readonly fills: readonly FillEntry[];
  readonly soundings: readonly DepthReading[];
  readonly levels: readonly DepthReading[];
  readonly development: readonly DevelopmentEntry[];
  readonly polymer: DoseEntry | null;
  readonly jar: string | null;
  readonly sand: string | null;
  readonly test: TestEntry | null;
  readonly disinfection: DoseEntry | null;
  readonly headWorks: {
    readonly apron_m: number;
    readonly drain_m: number;
    readonly cap: boolean;
    readonly lift: WellPumpName;
  } | null;
  readonly notes: readonly { readonly time_s: number; readonly text: string }[];
}

/** A sheet with nothing in it: the blank form for a real hole. */
export const BLANK_SHEET: RecordSheet = {
  format: RECORD_FORMAT,
  version: RECORD_FORMAT_VERSION,
  simulated: false,
  sim: '',
  lesson: '',
  seed: 0,
  who: '',
  begun: null,
  written: {},
  done_s: { drilled: null, cased: null, developed: null, tested: null, handedOver: null },
  time_s: 0,
  cost_marks: 0,
  hole: null,
  layers: [],
  samples: [],
  rods: [],
  noticed: [],
  casing: null,
  screen: null,
  fills: [],
  soundings: [],
  levels: [],
  development: [],
  polymer: null,
  jar: null,
  sand: null,
  test: null,
  disinfection: null,
  headWorks: null,
  notes: [],
};
