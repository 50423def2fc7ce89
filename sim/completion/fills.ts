// What may stand in the annulus: the packs and seals that are poured, and the ground itself where it has caved in.
import { PACK_NAMES, type PackName } from '../materials/packs';
import { SEAL_NAMES, SEALS, type SealName } from '../materials/seals';

/** Everything that is poured; ground is what has fallen off the wall or settled there. */
export const FILL_NAMES = [...PACK_NAMES, ...SEAL_NAMES, 'ground'] as const;
export type FillName = PackName | SealName | 'ground';
export const FILL_COUNT = FILL_NAMES.length;

/** Place of a fill in the arrays of the annulus. */
export const fillIndex = (name: FillName): number => FILL_NAMES.indexOf(name);
/** The one fill that runs instead of falling. */
export const SLURRY_FILL = FILL_NAMES.findIndex((name) => name in SEALS && SEALS[name as SealName].entersPack);
export const GROUND_FILL = fillIndex('ground');
