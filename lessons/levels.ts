// What may be shown and used: how much of the ground is seen, which signs and gauges there are, the groups of hands.

export const VIEW_LEVELS = ['open', 'hole', 'blind'] as const;
export const SENSE_IDS = ['returns', 'feel', 'funnel', 'stick', 'tray', 'stem', 'pump', 'pit', 'clock'] as const;
export const GAUGE_IDS = ['flow', 'pitLevel', 'bed', 'torque', 'fluid', 'loading'] as const;
export const HAND_GROUPS = ['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'book'] as const;
