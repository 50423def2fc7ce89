// The charts of a run, one below the other over the same job time. uPlot comes with this file: load it with import().

import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { formatNumber, t, type MessageKey } from '../words';
import type { TraceColumns, TraceMark } from './tracesOf';

interface Line {
  label: MessageKey;
  column: keyof TraceColumns;
  colour: 'ink' | 'accent' | 'water';
  dashed?: boolean;
}

interface Panel {
  title: MessageKey;
  unit: MessageKey;
  lines: readonly Line[];
  /** Depths and levels grow downwards. */
  down?: boolean;
  least?: number;
}

const PANELS: readonly Panel[] = [
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
  {
    title: 'charts.holeLevel',
    unit: 'charts.unit.m',
    down: true,
    least: 0.5,
    lines: [{ label: 'charts.holeLevel', column: 'holeLevel_m', colour: 'water' }],
  },
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
  {
    title: 'charts.returns',
    unit: 'charts.unit.percent',
    least: 100,
    lines: [{ label: 'charts.returns', column: 'returns_percent', colour: 'water' }],
  },
  {
    title: 'charts.flow',
    unit: 'charts.unit.Lmin',
    least: 50,
    lines: [{ label: 'charts.flow', column: 'flow_Lmin', colour: 'water' }],
  },
  {
    title: 'charts.bed',
    unit: 'charts.unit.cm',
    least: 10,
    lines: [{ label: 'charts.bed', column: 'bed_cm', colour: 'accent' }],
  },
];

export interface Panels {
  /** Puts the reading line at a row of the trace. */
  point(row: number): void;
  resize(width_px: number): void;
  destroy(): void;
}

export interface PanelLook {
  ink: string;
  muted: string;
  line: string;
  accent: string;
  water: string;
  font: string;
  text_px: number;
}

const HEIGHT_px = 132;
const AXIS_ROOM_em = 3.6;

export function createPanels(
  host: HTMLElement,
  columns: TraceColumns,
  marks: readonly TraceMark[],
  look: PanelLook,
  width_px: number,
  onpoint: (row: number) => void,
): Panels {
  const charts: uPlot[] = [];
  const font = `${look.text_px}px ${look.font}`;

  PANELS.forEach((panel, index) => {
    const last = index === PANELS.length - 1;
    const chart = new uPlot(
      {
        width: width_px,
        height: HEIGHT_px + (last ? look.text_px * 2.2 : 0),
        legend: { show: false },
        padding: [8, 12, last ? 0 : 2, 0],
        cursor: { y: false, drag: { x: false, y: false }, points: { size: 7 } },
        scales: {
          x: { time: false },
          y: { dir: panel.down ? -1 : 1, range: (_u, low, high) => rangeOf(panel, low, high) },
        },
        axes: [
          {
            show: true,
            size: last ? look.text_px * 2 : 4,
            stroke: look.muted,
            font,
            grid: { stroke: look.line, width: 0.5 },
            ticks: { stroke: look.line, width: last ? 1 : 0, size: 4 },
            values: last ? (_u, splits) => splits.map((value) => formatNumber(value, 1)) : () => [],
          },
          {
            size: look.text_px * AXIS_ROOM_em,
            stroke: look.muted,
            font,
            grid: { stroke: look.line, width: 0.5 },
            ticks: { stroke: look.line, size: 4 },
            space: look.text_px * 2,
            values: (_u, splits) => splits.map((value) => formatNumber(value, 1)),
          },
        ],
        series: [
          {},
          ...panel.lines.map((line) => ({
            label: t(line.label),
            stroke: look[line.colour],
            width: 1.8,
            dash: line.dashed ? [6, 4] : [],
            points: { show: false },
          })),
        ],
        hooks: {
          draw: [(u) => drawMarks(u, marks, look, index === 0)],
        },
      },
      [columns.time_min, ...panel.lines.map((line) => columns[line.column])],
      host.querySelector<HTMLElement>(`[data-panel="${index}"]`) ?? host,
    );
    const tell = (event: PointerEvent): void => onpoint(chart.posToIdx(event.offsetX));
    chart.over.addEventListener('pointerdown', tell);
    chart.over.addEventListener('pointermove', tell);
    charts.push(chart);
  });

  return {
    point(row) {
      for (const chart of charts) {
        const left = chart.valToPos(columns.time_min[row] ?? 0, 'x');
        chart.setCursor({ left, top: 10 }, false);
      }
    },
    resize(width) {
      for (const chart of charts) chart.setSize({ width, height: chart.height });
    },
    destroy() {
      for (const chart of charts) chart.destroy();
    },
  };
}

export const PANEL_HEADS = PANELS.map(({ title, unit, lines }) => ({ title, unit, lines }));

function rangeOf(panel: Panel, low: number, high: number): [number, number] {
  const top = Math.max(panel.least ?? 0, high * 1.06);
  return [Math.min(0, low), top];
}

function drawMarks(u: uPlot, marks: readonly TraceMark[], look: PanelLook, named: boolean): void {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.strokeStyle = look.accent;
  ctx.fillStyle = look.ink;
  ctx.lineWidth = devicePixelRatio;
  ctx.setLineDash([3 * devicePixelRatio, 3 * devicePixelRatio]);
  ctx.font = `${look.text_px * 0.9 * devicePixelRatio}px ${look.font}`;
  ctx.textBaseline = 'bottom';
  ctx.textAlign = 'left';
  let wordsRight = -Infinity;
  for (const mark of marks) {
    const x = Math.round(u.valToPos(mark.time_min, 'x', true)) + 0.5;
    ctx.globalAlpha = 0.6;
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    if (!named) continue;
    const words = t(`charts.event.${mark.name}` as MessageKey);
    const wide = ctx.measureText(words).width;
    if (x < wordsRight + 6 || x + wide > bbox.left + bbox.width) continue;
    ctx.globalAlpha = 1;
    ctx.fillText(words, x + 3 * devicePixelRatio, bbox.top + bbox.height - 2 * devicePixelRatio);
    wordsRight = x + wide + 3 * devicePixelRatio;
  }
  ctx.restore();
}
