// The charts of two runs side by side, by scale. The first run is drawn in ink, the second dashed in the accent.
import type { Panel } from '../../../charts/panelList';
import type { MessageKey } from '../../../words';
import type { Scale } from './alongside';

interface Shape {
  readonly title: MessageKey;
  readonly unit: MessageKey;
  readonly column: string;
  readonly least: number;
  readonly down?: boolean;
}

const SHARED: readonly Shape[] = [
  { title: 'charts.holeLevel', unit: 'charts.unit.m', column: 'level_m', least: 0.5, down: true },
  { title: 'charts.returns', unit: 'charts.unit.percent', column: 'returns_percent', least: 100 },
  { title: 'charts.fluid', unit: 'charts.unit.gL', column: 'soaked_gL', least: 1 },
  { title: 'charts.wall', unit: 'charts.unit.L', column: 'fallen_L', least: 10 },
  { title: 'charts.bed', unit: 'charts.unit.cm', column: 'bed_cm', least: 10 },
];

const SHAPES: Readonly<Record<Scale, readonly Shape[]>> = {
  time: [{ title: 'charts.depth', unit: 'charts.unit.m', column: 'hole_m', least: 1, down: true }, ...SHARED],
  depth: [{ title: 'live.beside.taken', unit: 'live.beside.taken.unit', column: 'time_min', least: 5 }, ...SHARED],
  well: [
    { title: 'charts.wellLevel', unit: 'charts.unit.m', column: 'well_m', least: 1, down: true },
    { title: 'charts.drawn', unit: 'charts.unit.Lmin', column: 'drawn_Lmin', least: 10 },
    { title: 'charts.cloudy', unit: 'charts.unit.NTU', column: 'cloudy_NTU', least: 5 },
    { title: 'charts.sand', unit: 'charts.unit.mgL', column: 'sand_mgL', least: 5 },
  ],
};

export function panelsFor(scale: Scale): Panel[] {
  return SHAPES[scale].map(({ column, title, unit, least, down = false }) => ({
    title,
    unit,
    least,
    down,
    lines: [
      { label: 'live.beside.first', column: `0.${column}`, colour: 'ink' },
      { label: 'live.beside.second', column: `1.${column}`, colour: 'accent', dashed: true },
    ],
  }));
}
