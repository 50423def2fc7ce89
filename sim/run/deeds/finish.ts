// Acts that make the well ready for people: disinfection, apron and cap, handing over.

import { packWater_m3, product_kg } from '../../well/disinfect';
import { CHLORINE } from '../../materials/chlorine';
import { DURATION_s } from '../../materials/durations';
import { PACKS } from '../../materials/packs';
import type { WellPumpName } from '../../materials/wellPumps';
import { screenCells } from '../../well/standing';
import { disturbSeals } from '../annulus';
import { closeIn } from '../closeIn';
import { send } from '../modes';
import type { Run } from '../run';
import { tell } from '../tell';
import { casingRefusal, waterRefusal } from '../wellReach';
import { standingNow } from '../wellTick';
import { dose } from './develop';
import type { Deeds } from './deed';

/** The water that a disinfecting dose must reach: in the casing, and in the pores of the pack beside the screen. */
function reached_m3(run: Run): number {
  const { well } = run.state;
  const standing = standingNow(run);
  const { first } = screenCells(standing);
  let water_m3 = well!.water_m3;
  for (let i = 0; i < well!.ring.count; i++) {
    const { pack, pack_frac } = standing.fill[first + i];
    if (!pack) continue;
    const packed_m = well!.ring.height_m[i] * pack_frac;
    water_m3 += packWater_m3(2 * well!.ring.hole_m[i], standing.pipe.outside_m, packed_m, PACKS[pack].porosity_frac);
  }
  return water_m3;
}

export const finishDeeds: Deeds = {
  disinfect: {
    refusal: (run, payload) => {
      const without = waterRefusal(run);
      if (without) return without;
      const { well, stocks } = run.state;
      if (!(stocks.chlorine_kg > 0)) return 'noChlorine';
      if (!well) return null;
      const powder_kg = product_kg(reached_m3(run), (payload.dose_mgL as number) / 1000, CHLORINE.strength_frac);
      return powder_kg > stocks.chlorine_kg ? 'noChlorine' : null;
    },
    time_s: (_run, payload) => DURATION_s.addChlorine + (payload.contact_s as number),
    begin: (run, payload) => {
      closeIn(run);
      const well = run.state.well!;
      const dose_mgL = payload.dose_mgL as number;
      well.disinfection = {
        tick: run.state.tick,
        dose_gL: dose_mgL / 1000,
        contact_s: 0,
        ct_mgminL: 0,
        turbidity_NTU: well.turbidity_NTU,
      };
      dose(run, dose_mgL, reached_m3(run));
    },
    end: (run) => tell(run, 'disinfected', { ct_mgminL: run.state.well?.disinfection?.ct_mgminL ?? 0 }),
  },
  headWorks: {
    refusal: (run) => casingRefusal(run) ?? (run.state.well?.headWorks ? 'apronDone' : null),
    begin: (run, payload, task) => {
      closeIn(run);
      disturbSeals(run);
      if (!task) return;
      task.word = payload.lift as string;
      task.data.apron_m = payload.apron_m as number;
      task.data.drain_m = payload.drain_m as number;
      task.data.cap = payload.cap === true ? 1 : 0;
    },
    end: (run, task) => {
      const { well } = run.state;
      if (!well) return;
      const { apron_m, drain_m, cap } = task.data;
      const lift = task.word as WellPumpName;
      well.headWorks = { tick: run.state.tick, apron_m, drain_m, cap: cap === 1, lift };
      tell(run, 'headWorksDone', { apron_m, drain_m, lift });
    },
  },
  handOver: {
    refusal: (run) => (run.state.well ? null : 'casingNotIn'),
    begin: (run) => {
      send(run, 'handOver');
      tell(run, 'handedOver', { depth_m: run.state.completion.casing.shoe_m });
    },
  },
};
