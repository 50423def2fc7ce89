// What goes wrong on a site, and how badly where nothing else is said. All ASSUMED: the sort of mishap that crews tell of; no survey is known.

export const FAULT_NAMES = ['pumpStops', 'hoseBursts', 'rainFills', 'lostTool', 'weakPowder', 'helperAway'] as const;
export type FaultName = (typeof FAULT_NAMES)[number];

/** What a crew can set right. The ditch keeps the rain of the ground round about out of the pit; a tool is fished out of the open hole. */
export const MEND_WORDS = ['engine', 'hose', 'ditch', 'tool'] as const;
export type MendWord = (typeof MEND_WORDS)[number];

/** Figures of a fault, each with what it is called in an act. */
export const FAULT = {
  /** Share of the pump's flow that a torn hose throws on the ground. */
  hose_frac: 0.6,
  /** A heavy shower and how long it lasts: 60 mm/h is a tropical downpour. */
  rain_mmh: 60,
  rain_s: 1200,
  /** Trodden ground that slopes to the pit and sheds its rain into it, m2. */
  catch_m2: 12,
  /** Share of its strength that old or damp powder still has. */
  powder_frac: 0.4,
  /** How long a helper stays away. */
  away_s: 1800,
} as const;

/** Chance in each minute of working that a bit pushes a tool into the wall of sand; harder ground takes it as much less as it is harder, MPa. */
export const ASIDE_frac = 0.3;
export const ASIDE_MPa = 1;
/** Chance that one try with the hook brings it up. */
export const FISHED_frac = 0.7;
