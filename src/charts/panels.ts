// The charts of a run, one below the other over the same job time. uPlot comes with this file: load it with import().

import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { formatNumber, t, type MessageKey } from '../words';
import type { Panel } from './panelList';
import type { Done, TraceMark } from './tracesOf';

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

/** What is drawn: the charts, their columns (null: a gap), events and acts over them, and how many minutes the unit of the time axis has. */
export interface Drawn {
  panels: readonly Panel[];
  columns: { time_min: Float64Array } & Record<string, Float64Array | (number | null)[]>;
  marks: readonly TraceMark[];
  done: readonly Done[];
  unit_min: number;
}

export function createPanels(
  host: HTMLElement,
  { panels, columns, marks, done, unit_min }: Drawn,
  look: PanelLook,
  width_px: number,
  onpoint: (row: number) => void,
): Panels {
  const charts: uPlot[] = [];
  const font = `${look.text_px}px ${look.font}`;
  const time = columns.time_min.map((at_min) => at_min / unit_min);

  panels.forEach((panel, index) => {
    const last = index === panels.length - 1;
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
          draw: [(u) => drawDone(u, done, unit_min, look), (u) => drawMarks(u, marks, unit_min, look, index === 0)],
        },
      },
      [time, ...panel.lines.map((line) => columns[line.column]!)],
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
        const left = chart.valToPos(time[row] ?? 0, 'x');
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

function rangeOf(panel: Panel, low: number, high: number): [number, number] {
  const top = Math.max(panel.least ?? 0, high * 1.06);
  return [Math.min(0, low), top];
}

/** Each act as a short stroke on the time axis. */
function drawDone(u: uPlot, done: readonly Done[], unit_min: number, look: PanelLook): void {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.strokeStyle = look.muted;
  ctx.lineWidth = devicePixelRatio;
  ctx.beginPath();
  for (const { time_min } of done) {
    const x = Math.round(u.valToPos(time_min / unit_min, 'x', true)) + 0.5;
    if (x < bbox.left || x > bbox.left + bbox.width) continue;
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + 6 * devicePixelRatio);
  }
  ctx.stroke();
  ctx.restore();
}

function drawMarks(u: uPlot, marks: readonly TraceMark[], unit_min: number, look: PanelLook, named: boolean): void {
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
    const x = Math.round(u.valToPos(mark.time_min / unit_min, 'x', true)) + 0.5;
    if (x < bbox.left || x > bbox.left + bbox.width) continue;
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
