// What may be asked of a practice, with its limits. It comes from the command line or from a run file, so it is checked.

import * as v from 'valibot';
import { SETTINGS } from '$sim';

export const DEPTH_LIMITS_m = { least: 3, most: 40 } as const;

export const AskedSchema = v.strictObject({
  depth_m: v.pipe(v.number(), v.finite(), v.minValue(DEPTH_LIMITS_m.least), v.maxValue(DEPTH_LIMITS_m.most)),
  setting: v.picklist(SETTINGS),
  /** A bare site: the crew digs its pit, which is not lined; a shower may come; night falls. Left out: a site made ready. */
  bare: v.exactOptional(v.literal(true)),
});
export type Asked = v.InferOutput<typeof AskedSchema>;

export const USUAL_ASKED: Asked = { depth_m: 20, setting: 'flood-plain' };
