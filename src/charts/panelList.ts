// Which charts a run has, one below the other: those of the hole, and those of the finished well.

import type { MessageKey } from '../words';
import type { TraceColumns, WellColumns } from './tracesOf';

export interface Line<Name extends string = string> {
  label: MessageKey;
  column: Name;
  colour: 'ink' | 'accent' | 'water';
  dashed?: boolean;
}

export interface Panel<Name extends string = string> {
  title: MessageKey;
  unit: MessageKey;
  lines: readonly Line<Name>[];
  /** Depths and levels grow downwards. */
  down?: boolean;
  least?: number;
}

/** A chart of one line. */
function single<Name extends string>(
  title: MessageKey,
  unit: MessageKey,
  column: Name,
  least: number,
  colour: Line['colour'],
  down = false,
): Panel<Name> {
  return { title, unit, least, down, lines: [{ label: title, column, colour }] };
}

export const HOLE_PANELS: readonly Panel<Exclude<keyof TraceColumns, 'time_min'>>[] = [
  {
    title: 'charts.depth',
    unit: 'charts.unit.m',
    down: true,
    least: 1,
    lines: [
      { label: 'charts.hole', column: 'hole_m', colour: 'ink' },
      { label: 'charts.bit', column: 'bit_m', colour: 'accent' },
    ],
  },
  single('charts.holeLevel', 'charts.unit.m', 'holeLevel_m', 0.5, 'water', true),
  {
    title: 'charts.pitLevel',
    unit: 'charts.unit.cm',
    down: true,
    least: 10,
    lines: [
      { label: 'charts.settling', column: 'settling_cm', colour: 'ink', dashed: true },
      { label: 'charts.suction', column: 'suction_cm', colour: 'water' },
    ],
  },
  single('charts.returns', 'charts.unit.percent', 'returns_percent', 100, 'water'),
  single('charts.flow', 'charts.unit.Lmin', 'flow_Lmin', 50, 'water'),
  single('charts.fluid', 'charts.unit.gL', 'soaked_gL', 1, 'ink'),
  single('charts.wall', 'charts.unit.L', 'fallen_L', 10, 'accent'),
  single('charts.bed', 'charts.unit.cm', 'bed_cm', 10, 'accent'),
];

export const WELL_PANELS: readonly Panel<Exclude<keyof WellColumns, 'time_min'>>[] = [
  single('charts.wellLevel', 'charts.unit.m', 'level_m', 1, 'water', true),
  single('charts.drawn', 'charts.unit.Lmin', 'drawn_Lmin', 10, 'water'),
  single('charts.cloudy', 'charts.unit.NTU', 'cloudy_NTU', 5, 'ink'),
  single('charts.sand', 'charts.unit.mgL', 'sand_mgL', 5, 'accent'),
];
