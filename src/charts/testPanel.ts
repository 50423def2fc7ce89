// The plot of a yield test, drawn by uPlot: load it with import().

import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import type { TestReading } from '$sim';
import { formatNumber, t } from '../words';
import type { PanelLook } from './panels';
import { levelRange_m, testCurve, type TimeScale } from './testCurve';

export interface TestPanel {
  show(test: TestReading, scale: TimeScale): void;
  resize(width_px: number): void;
  destroy(): void;
}

const AXIS_ROOM_em = 3.4;

export function createTestPanel(host: HTMLElement, look: PanelLook, width_px: number, height_px: number): TestPanel {
  let chart: uPlot | null = null;
  let scaleNow: TimeScale | null = null;
  let width = width_px;
  let test: TestReading | null = null;

  function make(scale: TimeScale): uPlot {
    const font = `${look.text_px}px ${look.font}`;
    const line = {
      stroke: look.muted,
      font,
      grid: { stroke: look.line, width: 0.5 },
      ticks: { stroke: look.line, size: 4 },
    };
    return new uPlot(
      {
        width,
        height: height_px,
        legend: { show: false },
        padding: [10, 14, 0, 0],
        cursor: { show: false },
        scales: {
          x: { time: false, distr: scale === 'log' ? 3 : 1 },
          y: { dir: -1, range: () => levelRange_m(test!) },
        },
        axes: [
          {
            ...line,
            size: look.text_px * 2.2,
            values: (_u, splits) => splits.map((value) => (value === null ? '' : tick(value, scale))),
          },
          {
            ...line,
            size: look.text_px * AXIS_ROOM_em,
            space: look.text_px * 2.4,
            values: (_u, splits) => splits.map((value) => formatNumber(value, 1)),
          },
        ],
        series: [
          {},
          { stroke: look.water, width: 2.2, points: { show: true, size: 5, fill: look.water } },
          { stroke: look.accent, width: 2.2, dash: [6, 4], points: { show: true, size: 5, fill: look.accent } },
        ],
        hooks: { draw: [(u) => drawRest(u, look, test!), (u) => drawSteps(u, look, test!, scale)] },
      },
      [[], [], []],
      host,
    );
  }

  return {
    show(next, scale) {
      test = next;
      if (!chart || scale !== scaleNow) {
        chart?.destroy();
        chart = make(scale);
        scaleNow = scale;
      }
      const { time_min, pumped_m, rising_m } = testCurve(next, scale);
      chart.setData([time_min, pumped_m, rising_m]);
    },
    resize(next_px) {
      width = next_px;
      chart?.setSize({ width, height: height_px });
    },
    destroy() {
      chart?.destroy();
      chart = null;
    },
  };
}

/** Few figures on a scale of logarithms: ones, tens, hundreds. */
function tick(value: number, scale: TimeScale): string {
  if (scale === 'log') {
    const power = Math.log10(value);
    if (Math.abs(power - Math.round(power)) > 1e-6) return '';
  }
  return formatNumber(value, 1);
}

/** Where the water stood before. */
function drawRest(u: uPlot, look: PanelLook, { static_m }: TestReading): void {
  const { ctx, bbox } = u;
  const y = Math.round(u.valToPos(static_m, 'y', true)) + 0.5;
  ctx.save();
  ctx.strokeStyle = look.ink;
  ctx.lineWidth = devicePixelRatio;
  ctx.setLineDash([4 * devicePixelRatio, 4 * devicePixelRatio]);
  ctx.beginPath();
  ctx.moveTo(bbox.left, y);
  ctx.lineTo(bbox.left + bbox.width, y);
  ctx.stroke();
  ctx.restore();
}

/** Each rate at the time when it began, at the foot of the plot. */
function drawSteps(u: uPlot, look: PanelLook, test: TestReading, scale: TimeScale): void {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.fillStyle = look.ink;
  ctx.strokeStyle = look.muted;
  ctx.font = `${look.text_px * devicePixelRatio}px ${look.font}`;
  ctx.textBaseline = 'bottom';
  ctx.textAlign = 'left';
  let right = -Infinity;
  for (const { time_min, rate_Lmin } of testCurve(test, scale).steps) {
    const x = scale === 'log' && time_min <= 0 ? bbox.left : Math.round(u.valToPos(time_min, 'x', true)) + 0.5;
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    const words = t('charts.test.rate', { rate_Lmin });
    const wide = ctx.measureText(words).width;
    if (x < right || x + wide > bbox.left + bbox.width) continue;
    ctx.fillText(words, x + 4 * devicePixelRatio, bbox.top + bbox.height - 3 * devicePixelRatio);
    right = x + wide + 8 * devicePixelRatio;
  }
  ctx.restore();
}
