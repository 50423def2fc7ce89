// Putting an additive into the suction chamber: from which stock, how long it takes, what becomes of it.

import { CHLORINE, SOAKING, SWELLING } from '../../fluid/substances';
import { GRAIN_kgm3 } from '../../hole/slip';
import { lumpsWhenDumped_frac, type AdditiveName } from '../../materials/additives';
import { BENTONITE } from '../../materials/bentonite';
import { CHLORINE as CHLORINE_POWDER } from '../../materials/chlorine';
import { DURATION_s } from '../../materials/durations';
import { NATIVE_CLAY } from '../../materials/nativeClay';
import { CLAY_CLASS, SIZE_CLASSES } from '../../materials/sizes';
import type { Payload } from '../check';
import type { RefusalKey } from '../names';
import { pitRoom_m3 } from '../pitSigns';
import type { Run } from '../run';
import type { Stocks, Task } from '../state';
import type { Deed } from './deed';

const SILT_CLASS = SIZE_CLASSES.findIndex(({ id }) => id === 'silt');

interface Kind {
  readonly stock: keyof Stocks;
  readonly used: keyof Stocks;
  readonly none: RefusalKey;
  /** Seconds to put so much in with care. */
  readonly time_s: (mass_kg: number) => number;
  /** Takes one second's share into the suction chamber; lumps_kg of it clots. */
  readonly pour: (run: Run, share_kg: number, lumps_kg: number) => void;
}

function dissolve({ state }: Run, s: number, mass_kg: number): void {
  state.pit.suction.dissolved_kg[s] += mass_kg;
  state.boundary.dissolvedIn_kg[s] += mass_kg;
}

/** Grains come into the suction chamber, into the fluid or on the floor. */
function strew({ state }: Run, k: number, grains_m3: number, onFloor: boolean): void {
  const { suction } = state.pit;
  (onFloor ? suction.deposit_m3 : suction.solids_m3)[k] += grains_m3;
  state.boundary.solidsIn_m3[k] += grains_m3;
}

const slowly = (each_s: number, most_s: number) => (mass_kg: number) =>
  Math.min(most_s, Math.max(DURATION_s.addDumped, Math.ceil(mass_kg * each_s)));

const KINDS: Readonly<Record<AdditiveName, Kind>> = {
  polymer: {
    stock: 'powder_kg',
    used: 'powderUsed_kg',
    none: 'noPowder',
    time_s: slowly(10 * DURATION_s.addSprinkled_100g, DURATION_s.addMost),
    pour: (run, share_kg, lumps_kg) => {
      // What weak powder lacks is dust that was never polymer: it changes nothing and is not counted.
      const { powder_frac } = run.state.faults;
      run.state.pit.suction.clumps_kg += lumps_kg * powder_frac;
      dissolve(run, SOAKING, (share_kg - lumps_kg) * powder_frac);
      run.state.boundary.polymerIn_kg += share_kg * powder_frac;
    },
  },
  bentonite: {
    stock: 'bentonite_kg',
    used: 'bentoniteUsed_kg',
    none: 'noBentonite',
    time_s: slowly(DURATION_s.addBentonite_kg, DURATION_s.addBagMost),
    pour: (run, share_kg, lumps_kg) => {
      dissolve(run, SWELLING, share_kg - lumps_kg);
      // Lumps are wet only at the skin: they lie on the floor like silt.
      strew(run, SILT_CLASS, lumps_kg / BENTONITE.grain_kgm3, true);
    },
  },
  nativeClay: {
    stock: 'clay_kg',
    used: 'clayUsed_kg',
    none: 'noClay',
    time_s: slowly(DURATION_s.addClay_kg, DURATION_s.addBagMost),
    pour: (run, share_kg, lumps_kg) => {
      for (const [mass_kg, onFloor] of [
        [share_kg - lumps_kg, false],
        [lumps_kg, true],
      ] as const) {
        const grains_m3 = mass_kg / GRAIN_kgm3;
        strew(run, CLAY_CLASS, grains_m3 * NATIVE_CLAY.clay_frac, onFloor);
        strew(run, SILT_CLASS, grains_m3 * (1 - NATIVE_CLAY.clay_frac), onFloor);
      }
    },
  },
  chlorine: {
    stock: 'chlorine_kg',
    used: 'chlorineUsed_kg',
    none: 'noChlorine',
    time_s: () => DURATION_s.addChlorine,
    pour: (run, share_kg) => dissolve(run, CHLORINE, share_kg * CHLORINE_POWDER.strength_frac),
  },
};

const kindOf = (payload: Payload): Kind => KINDS[payload.additive as AdditiveName];
const mass_kg = (payload: Payload): number => (payload.mass_g as number) / 1000;

export const addAdditive: Deed = {
  refusal: (run, payload) => {
    const kind = kindOf(payload);
    if (run.state.stocks[kind.stock] < mass_kg(payload) - 1e-9) return kind.none;
    const clay = payload.additive === 'nativeClay';
    return clay && pitRoom_m3(run.state.pit) < mass_kg(payload) / GRAIN_kgm3 ? 'pitFull' : null;
  },
  time_s: (_run, payload) =>
    payload.manner === 'dumped' ? DURATION_s.addDumped : kindOf(payload).time_s(mass_kg(payload)),
  begin: (run, payload, task: Task | null) => {
    const { stocks } = run.state;
    const kind = kindOf(payload);
    stocks[kind.stock] = Math.max(0, stocks[kind.stock] - mass_kg(payload));
    stocks[kind.used] += mass_kg(payload);
    if (!task) return;
    task.word = payload.additive as string;
    task.data.perTick_kg = mass_kg(payload) / Math.max(1, task.endTick - run.state.tick);
    task.data.clumps_frac = payload.manner === 'dumped' ? lumpsWhenDumped_frac(payload.additive as AdditiveName) : 0;
  },
  during: (run, task) => {
    const share_kg = task.data.perTick_kg;
    KINDS[task.word as AdditiveName].pour(run, share_kg, share_kg * task.data.clumps_frac);
  },
};
