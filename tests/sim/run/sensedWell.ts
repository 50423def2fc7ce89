// The same for the fields of the well under way: only a job that goes on to a well has senses of them.

/** Seen, felt, read off the tally, or known because the crew did it. */
export const WELL_SENSED: readonly string[] = [
  'completion.casing.joined',
  'completion.casing.length_m',
  'completion.casing.look',
  'completion.casing.shoe_m',
  'completion.casing.snapped',
  // The crew's own plan, as it wrote it down.
  ...[
    'cap',
    'casing',
    'centralisers',
    'cloth',
    'pack',
    'packTop_m',
    'screenFrom_m',
    'screenTo_m',
    'seal',
    'sealFrom_m',
    'sealTo_m',
    'slotArc_mm',
    'slotRows',
    'slotSpacing_mm',
    'slotWidth_mm',
    'stickUp_m',
    'sump_m',
  ].map((name) => `completion.plan.${name}`),
];

/** Senses must not depend on them. */
export const WELL_HIDDEN: readonly string[] = [
  'completion.casing.filling',
  'completion.casing.glued_tick',
  'completion.casing.inside_m',
  'completion.casing.joint_frac',
  'completion.casing.motion_m',
  'completion.casing.motion_ms',
  'completion.casing.steel_m',
  'completion.casing.worked_m',
  // What was thrown in is known by what was poured; where it stands is not.
  'completion.openFill_m3[]',
];
