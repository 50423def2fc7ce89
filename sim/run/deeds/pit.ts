// Acts on the pit: water in, sand out, the stick.

import type { Payload } from '../check';
import { createPit } from '../../pit/pit';
import { CHANNEL_WIDTH_m } from '../pitWeather';
import { emptyParcel } from '../../hole/parcel';
import { DURATION_s } from '../../materials/durations';
import { digOut } from '../../pit/dig';
import { allOf } from '../../pit/exchange';
import { freeVolume_m3, levelBelowRim_m } from '../../pit/level';
import { countOut } from '../boundary';
import { dip, dipIntoWell } from '../topUp';
import { diggable_m3, pitRoom_m3 } from '../pitSigns';
import type { DrillingPumpName } from '../../materials/drillingPumps';
import { gearRefusal } from '../gear';
import type { RefusalKey } from '../names';
import { takeGear } from '../newHole';
import type { Run } from '../run';
import type { Gear, Task } from '../state';
import type { Deeds } from './deed';
import { holeBegun } from './site';

/** The stick is read to the nearest centimetre. */
const STICK_m = 0.01;
/** Less than this in the suction chamber fills no bucket, m3. */
const LAST_BUCKET_m3 = 0.01;
/** A heap thinner than this is not worth the shovel, L. */
const SHOVEL_L = 1;

function waterRefusal(run: Run): RefusalKey | null {
  if (run.state.stocks.water_L <= 0) return 'noWater';
  return pitRoom_m3(run.state.pit) < 1e-3 ? 'pitFull' : null;
}

function beginPour(run: Run, wanted_L: number, task: Task | null): void {
  if (!task) return;
  const given_L = Math.min(wanted_L, run.state.stocks.water_L);
  task.data.perTick_L = given_L / Math.max(1, task.endTick - run.state.tick);
}

/** Pours one second's share. What finds no room stays in the bucket. */
function pour(run: Run, task: Task): void {
  const { stocks, pit, boundary } = run.state;
  const share_L = Math.min(task.data.perTick_L, stocks.water_L, pitRoom_m3(pit) * 1000);
  if (share_L <= 0) return;
  stocks.water_L -= share_L;
  stocks.waterUsed_L += share_L;
  pit.suction.water_m3 += share_L / 1000;
  boundary.waterIn_m3 += share_L / 1000;
}

/** Volume dug for a pit with its channel, m3. */
const dug_m3 = (payload: Payload): number =>
  (payload.settling_m3 as number) +
  (payload.suction_m3 as number) +
  CHANNEL_WIDTH_m * CHANNEL_WIDTH_m * (payload.channel_m as number);

/** Width of the bit asked for; the kit's own where nothing is said. */
const bitWanted_m = (run: Run, payload: Payload): number =>
  typeof payload.bit_mm === 'number' ? payload.bit_mm / 1000 : run.state.gear.bit_m;

function setOutRefusal(run: Run, payload: Payload): RefusalKey | null {
  if (run.state.site.pitDug) return 'alreadySetOut';
  const { bit_mm, pump } = payload as { bit_mm?: number | null; pump?: DrillingPumpName | null };
  const refused = gearRefusal(run.scenario, bit_mm, pump);
  if (refused) return refused;
  // The bit cannot be changed for another in the middle of a hole.
  return bitWanted_m(run, payload) !== run.state.gear.bit_m && holeBegun(run) ? 'siteSettled' : null;
}

export const pitDeeds: Deeds = {
  setOut: {
    refusal: setOutRefusal,
    time_s: (_run, payload) => Math.ceil(dug_m3(payload) * DURATION_s.setOut_m3),
    begin: (run, payload, task) => {
      if (!task) return;
      task.data.settling_m3 = payload.settling_m3 as number;
      task.data.suction_m3 = payload.suction_m3 as number;
      task.data.channel_m = payload.channel_m as number;
      task.data.bit_m = bitWanted_m(run, payload);
      task.word = (payload.pump as string | undefined) ?? '';
    },
    // A pit is dug as deep as the kit says; the volume sets its area.
    end: (run, task) => {
      const { state } = run;
      const { settling, suction, notch_m } = run.kit;
      // What ran out of the hole before there was a pit has gone over the ground. No powder was in it: that wants a pit.
      const { spilled } = run.work;
      emptyParcel(spilled);
      allOf(state.pit, spilled);
      countOut(state.boundary, spilled);
      const chamber = (volume_m3: number, depth_m: number) => ({ area_m2: volume_m3 / depth_m, depth_m });
      state.pit = createPit({
        settling: chamber(task.data.settling_m3, settling.depth_m),
        suction: chamber(task.data.suction_m3, suction.depth_m),
        notch_m,
        strainer_m: state.pit.strainer_m,
      });
      Object.assign(state.site, { pitDug: true, channel_m: task.data.channel_m });
      takeGear(run, { bit_m: task.data.bit_m, pump: task.word as Gear['pump'] });
    },
  },
  fillPit: {
    refusal: waterRefusal,
    time_s: (_run, payload) => Math.ceil((payload.water_L as number) * DURATION_s.fillPit_L),
    begin: (run, payload, task) => beginPour(run, payload.water_L as number, task),
    during: pour,
  },
  addWater: {
    refusal: waterRefusal,
    time_s: (_run, payload) => Math.ceil((payload.water_L as number) * DURATION_s.addWater_L),
    begin: (run, payload, task) => beginPour(run, payload.water_L as number, task),
    during: pour,
  },
  topUp: {
    refusal: (run) => (freeVolume_m3(run.state.pit.suction) < LAST_BUCKET_m3 ? 'pitEmpty' : null),
    time_s: (_run, payload) => Math.ceil((payload.fluid_L as number) * DURATION_s.topUp_L),
    begin: (run, payload, task) => {
      if (task) task.data.perTick_m3 = (payload.fluid_L as number) / 1000 / Math.max(1, task.endTick - run.state.tick);
    },
    during: (run, task) => (run.state.well ? dipIntoWell(run, task.data.perTick_m3) : dip(run, task.data.perTick_m3)),
  },
  readStick: {
    end: (run) => {
      const level_m = Math.round(levelBelowRim_m(run.state.pit.suction) / STICK_m) * STICK_m;
      run.state.stick = { level_m, tick: run.state.tick };
    },
  },
  digOutPit: {
    refusal: (run, payload) =>
      diggable_m3(run.state.pit[payload.chamber as 'settling' | 'suction']) * 1000 < SHOVEL_L ? 'nothingToDig' : null,
    time_s: (_run, payload) => Math.ceil((payload.spoil_L as number) * DURATION_s.digOut_L),
    begin: (run, payload, task) => {
      if (!task) return;
      task.word = payload.chamber as string;
      task.data.perTick_m3 = (payload.spoil_L as number) / 1000 / Math.max(1, task.endTick - run.state.tick);
    },
    during: (run, task) => {
      const { spilled } = run.work;
      emptyParcel(spilled);
      digOut(run.state.pit[task.word as 'settling' | 'suction'], task.data.perTick_m3, spilled);
      countOut(run.state.boundary, spilled);
    },
  },
};
