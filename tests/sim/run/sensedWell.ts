// The same for the fields of the well under way: only a job that goes on to a well has senses of them.
import { FAULTS_HIDDEN, FAULTS_SENSED } from './sensedFaults';

/** All parts of one thing, such as the plan. */
const partsOf = (whole: string, names: string): string[] => names.split(' ').map((name) => `${whole}.${name}`);

/** Seen, felt, read off the tally, or known because the crew did it. */
export const WELL_SENSED: readonly string[] = [
  ...FAULTS_SENSED,
  // The plan is the crew's own.
  ...partsOf('completion.plan', 'casing cap centralisers cloth stickUp_m sump_m screenFrom_m screenTo_m'),
  ...partsOf('completion.plan', 'slotArc_mm slotRows slotSpacing_mm slotWidth_mm'),
  ...partsOf('completion.plan', 'pack packTop_m seal sealFrom_m sealTo_m'),
  ...partsOf('completion.casing', 'joined length_m look shoe_m snapped'),
  // What went in and when; a seal in a jar beside the well tells when it is ready.
  ...partsOf('completion.poured[]', 'fill volume_m3'),
  ...partsOf('completion.seals[]', 'seal volume_m3 placed_tick ready_tick'),
  ...partsOf('completion.sounded', 'top_m tick'),
  // The jar, the dipper, the test sheet, the nose, the finished head.
  'well.jar.tick',
  'well.jar.turbidity_NTU',
  'well.jar.sand_gL',
  'well.dip.level_m',
  'well.dip.tick',
  'well.test.lift',
  'well.test.rows[].time_s',
  'well.test.rows[].rate_Lmin',
  'well.test.rows[].level_m',
  'well.test.static_m',
  'well.test.lowest_m',
  'well.test.recovered_m',
  'well.test.over',
  // A smell: so much chlorine in so much water.
  'well.chlorine_kg',
  'well.water_m3',
  'well.headWorks.apron_m',
  'well.headWorks.drain_m',
  'well.headWorks.cap',
  'well.headWorks.lift',
];

/** Senses must not depend on them: nobody on site can know them at once, or the crew knows them because it did them. */
export const WELL_HIDDEN: readonly string[] = [
  ...FAULTS_HIDDEN,
  ...partsOf('completion.casing', 'filling glued_tick inside_m joint_frac motion_m motion_ms steel_m worked_m'),
  'completion.openFill_m3[]',
  'completion.seals[].told',
  ...partsOf(
    'completion.annulus',
    'dz_m cells used entered_m3 K_Pasn n_ratio density_kgm3 salt_gL looked_m caves jamCell jamFill',
  ),
  ...partsOf('completion.annulus', 'radius_m[] offMiddle_frac[] fill_m3[] falling_m3[] inFlight_m3[] fall_ms[]'),
  ...partsOf('completion.annulus', 'bridged[] spoilt_frac[] clogged_frac[] support_frac[] put_m3[]'),
  // The crew's own book.
  'recordFields.*',
  'well.closed',
  'well.closedTick',
  'well.casing',
  'well.section_m2',
  'well.bottom_m',
  'well.level_m',
  'well.chlorineIn_m3',
  'well.ring.count',
  ...['top_m', 'height_m', 'hole_m', 'invaded_m', 'dose_ratio', 'whole_frac', 'mud_frac', 'cake_s', 'caked_frac'].map(
    (name) => `well.ring.${name}[]`,
  ),
  ...['clay_frac', 'washed_frac', 'flow_frac', 'bridged_frac'].map((name) => `well.ring.${name}[]`),
  ...['T_m2s', 'S_ratio', 'radius_m', 'skin_ratio', 'wellLoss_s2m5', 'freeThickness_m'].map(
    (name) => `well.intake.${name}`,
  ),
  'well.rest_m',
  'well.rates.count',
  'well.rates.from_s[]',
  'well.rates.rate_m3s[]',
  'well.ground_m3s',
  'well.drawn_m3s',
  'well.still',
  'well.stirred',
  'well.sand_gL',
  'well.turbidity_NTU',
  'well.sandClass_frac[]',
  'well.washed_s[]',
  'well.out_m3',
  'well.in_m3',
  'well.sand_kg',
  'well.clearTold',
  'well.brokenTold',
  'well.test.tick',
  'well.test.rates_Lmin[]',
  'well.test.step_s',
  'well.test.recovery_s',
  'well.disinfection.tick',
  'well.disinfection.dose_gL',
  'well.disinfection.contact_s',
  'well.disinfection.ct_mgminL',
  'well.disinfection.turbidity_NTU',
  'well.headWorks.tick',
];
