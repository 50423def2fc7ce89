// The gauges that a lesson may show, from the newest row of the run's trace.
import type { Lesson } from '$lessons';
import type { Run, TraceColumn } from '$sim';
import type { KeyedMessage } from '../../words';

type GaugeId = Lesson['gauges'][number];

interface Gauge {
  readonly column: TraceColumn;
  readonly key: string;
  /** Name of the message's slot and what one SI unit is in it. */
  readonly slot: string;
  readonly per_SI: number;
}

const GAUGES: Readonly<Record<GaugeId, Gauge>> = {
  flow: { column: 'flow_m3s', key: 'work.gauge.flow', slot: 'flow_Lmin', per_SI: 60000 },
  pitLevel: { column: 'suctionLevel_m', key: 'work.gauge.pitLevel', slot: 'level_cm', per_SI: 100 },
  bed: { column: 'bed_m', key: 'work.gauge.bed', slot: 'bed_cm', per_SI: 100 },
  torque: { column: 'torque_Nm', key: 'work.gauge.torque', slot: 'torque_Nm', per_SI: 1 },
  fluid: { column: 'K_Pasn', key: 'work.gauge.fluid', slot: 'K_Pasn', per_SI: 1 },
  loading: { column: 'loading_frac', key: 'work.gauge.loading', slot: 'loading_frac', per_SI: 1 },
};

export function gaugesOf(run: Run, wanted: readonly GaugeId[]): KeyedMessage[] {
  const { trace } = run.record;
  if (trace.length === 0) return [];
  return wanted.map((id) => {
    const gauge = GAUGES[id];
    return { key: gauge.key, data: { [gauge.slot]: trace.columns[gauge.column][trace.length - 1]! * gauge.per_SI } };
  });
}
