// The figures of the record as lines of a label and what stands beside it; empty where nobody knows.
import type { RecordSheet } from '$lessons';
import { formatDay, formatNumber, t, type MessageKey } from '../words';

export interface Row {
  readonly label: MessageKey;
  readonly is: string;
}

const row = (label: MessageKey, is: string | null | undefined): Row => ({ label, is: is ?? '' });

function begun({ begun, done_s, simulated }: RecordSheet): string {
  if (!simulated) return '';
  const when = (time_s: number | null): string =>
    time_s === null ? t('record.notYet') : t('record.after', { time_s });
  return t('record.head.begunOn', {
    date: begun === null ? '' : formatDay(Date.parse(begun)),
    drilled: when(done_s.drilled),
    handedOver: when(done_s.handedOver),
  });
}

function method({ hole }: RecordSheet): string {
  if (!hole) return t('record.head.method.blank');
  const flush = hole.flush.map(({ additive, mass_kg }) =>
    t('record.head.flush', { additive: `work.additive.${additive}`, mass_kg }),
  );
  const { rods, rodLength_m, water_L } = hole;
  return [t('record.head.method.is', { rods, rod_m: rodLength_m, water_L }), ...flush].join(', ');
}

export function headRows(sheet: RecordSheet): Row[] {
  const { hole, time_s, cost_marks } = sheet;
  const depths = hole?.givenUp_m.map((depth_m) => formatNumber(depth_m, 1)).join(', ') ?? '';
  const depth = hole && t('record.head.depth.is', { depth_m: hole.depth_m, bit_mm: hole.bit_mm });
  return [
    row('record.head.begun', begun(sheet)),
    row('record.head.method', method(sheet)),
    row('record.head.depth', depth && [depth, ...(depths ? [t('record.head.givenUp', { depths })] : [])].join('; ')),
    row('record.head.crew', hole && t('record.head.crew.is', { crew: hole.crew, time_s, cost: cost_marks })),
  ];
}

export function casingRows({ casing, screen }: RecordSheet): Row[] {
  return [
    row('record.casing.kind', casing && t(`record.pipe.${casing.kind}`)),
    row(
      'record.casing.length',
      casing && t('record.casing.length.is', { length_m: casing.length_m, n: casing.pieces }),
    ),
    row('record.casing.stickUp', casing && t('record.casing.stickUp.is', { stickUp_m: casing.stickUp_m })),
    row('record.screen.from', screen && t('record.screen.from.is', { ...rangeOf(screen), sump_m: screen.sump_m })),
    row(
      'record.screen.slots',
      screen &&
        t('record.screen.slots.is', {
          width_mm: screen.slotWidth_mm,
          rows: screen.slotRows,
          arc_mm: screen.slotArc_mm,
          spacing_mm: screen.slotSpacing_mm,
        }),
    ),
    row('record.screen.cloth', screen && t(`record.cloth.${screen.cloth}`)),
    row('record.screen.cap', casing && t(casing.cap ? 'record.screen.capped' : 'record.screen.open')),
    row('record.casing.centralisers', casing && t('record.casing.centralisers.is', { n: casing.centralisers })),
  ];
}

const rangeOf = ({ from_m, to_m }: { from_m: number; to_m: number }): { from_m: number; to_m: number } => ({
  from_m,
  to_m,
});

export function workRows({ development, polymer, jar, sand, disinfection, headWorks }: RecordSheet): Row[] {
  return [
    row(
      'record.development',
      development
        .map(({ method, time_s }) => t('record.develop.one', { method: `record.develop.${method}`, time_s }))
        .join(', '),
    ),
    row('record.polymer', polymer && t('record.dose.is', { ...polymer })),
    row('record.jar', jar && t('record.jar.is', { jar: `record.jar.${jar}`, sand: `record.sand.${sand}` })),
    row('record.disinfection', disinfection && t('record.dose.is', { ...disinfection })),
    row(
      'record.headWorks',
      headWorks &&
        t('record.headWorks.is', {
          apron_m: headWorks.apron_m,
          drain_m: headWorks.drain_m,
          cap: headWorks.cap ? 'record.headWorks.cap' : 'record.headWorks.noCap',
        }),
    ),
    row('record.headWorks.pump', headWorks && t(`work.lift.${headWorks.lift}`)),
  ];
}

export function testRows({ test }: RecordSheet): Row[] {
  const rows = [
    row('record.test.lift', test && t(`work.lift.${test.lift}`)),
    row(
      'record.test.levels',
      test &&
        t('record.test.levels.is', {
          static_m: test.static_m,
          lowest_m: test.lowest_m,
          recovered: test.recovered_m === null ? '–' : t('record.test.depth', { depth_m: test.recovered_m }),
        }),
    ),
    row(
      'record.test.perMetre',
      test?.perMetre_Lminm != null ? t('record.test.perMetre.is', { perMetre: test.perMetre_Lminm }) : '',
    ),
  ];
  if (test?.brokenOff) rows.push(row('record.test.stopped', t(`record.test.${test.brokenOff}`)));
  return rows;
}

/** At most so many readings, evenly picked, the first and the last among them. */
export function fewReadings<T>(rows: readonly T[], most: number): readonly T[] {
  if (rows.length <= most) return rows;
  return Array.from({ length: most }, (_, i) => rows[Math.round((i * (rows.length - 1)) / (most - 1))]!);
}
