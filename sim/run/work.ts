// The scratch memory of a tick: made once, filled anew each second, never part of the state.

import { createBitResult, type BitInput, type BitResult } from '../drilling/bit';
import type { Grip } from '../drilling/grip';
import { breakPace, type BreakLoss, type BreakPace } from '../fluid/chlorine';
import { createMakeup } from '../fluid/makeup';
import { tickShares, type TickShares } from '../fluid/soak';
import type { Rheology } from '../fluid/rheology';
import type { CutGround } from '../hole/cut';
import type { HoleState, StemPlace } from '../hole/hole';
import { createMouth, type MouthFlux } from '../hole/mouth';
import { createParcel, type Parcel } from '../hole/parcel';
import type { StemReading } from '../hole/stemFill';
import { createHoleWork, type HoleWork, type SweepInput } from '../hole/sweep';
import { capture_frac } from '../hole/loss/cake';
import { createLossWork, type LossInput, type LossWork } from '../hole/loss/work';
import type { SwabInput } from '../hole/wall/swab';
import type { WallInput } from '../hole/wall/input';
import { createWallWork, type WallWork } from '../hole/wall/work';
import { createWallGround, type WallGround } from '../hole/wallGround';
import { createFlowResult, type FlowInput, type FlowResult } from '../hydraulics/flow';
import type { LineFluid } from '../hydraulics/pipe';
import type { Kit } from '../materials/kit';
import type { Signals } from '../machine/signals';
import type { MachineEvent } from '../machine/machine';
import { createPitWork, type PitWork } from '../pit/exchange';
import { createPitGround, type PitGround } from '../pit/seep';
import type { ChamberReading } from '../pit/level';
import { createWaterTick, type WaterTick } from '../well/casingWater';
import { groundAt } from './ground';
import type { Scenario } from './scenario';
import type { SeenSample } from './traySenses';

/** Job seconds in one tick. */
export const TICK_s = 1;

export interface Work {
  readonly shares: TickShares;
  /** What chlorine does in a tick, and what it took in this one. */
  readonly breakPace: BreakPace;
  readonly breakLoss: BreakLoss;
  readonly place: StemPlace;
  readonly hole: HoleWork;
  readonly wallGround: WallGround;
  readonly lossInput: LossInput;
  readonly loss: LossWork;
  /** The fluid in the ring round the stem, for wall and swab. */
  readonly ringFluid: LineFluid;
  readonly swabInput: SwabInput;
  readonly wallInput: WallInput;
  readonly wall: WallWork;
  /** What fell off the wall, and where the bit stood as the second began. */
  readonly fallen: Parcel;
  /** What a bucket pours into the hole in this second. */
  readonly poured: Parcel;
  bitBefore_m: number;
  /** Lower end of the steel, stem or casing, as the second began. */
  steelBefore_m: number;
  readonly pit: PitWork;
  readonly pitGround: PitGround;
  readonly flowInput: FlowInput;
  readonly flowResult: FlowResult;
  /** What the pump drew, what left the nozzles, what was cut, what came over the sill, what was spilled or dug out, what the bit reamed off a tight wall. */
  readonly drawn: Parcel;
  readonly atBit: Parcel;
  readonly cut: Parcel;
  readonly mouth: MouthFlux;
  readonly spilled: Parcel;
  readonly reamed: Parcel;
  readonly rheology: Rheology;
  readonly chamberReading: ChamberReading;
  readonly stemReading: StemReading;
  readonly cutGround: CutGround;
  readonly bitInput: BitInput;
  readonly bitResult: BitResult;
  /** Where the wall holds the steel. */
  readonly grip: Grip;
  readonly sweep: SweepInput;
  /** What is asked of the well in this second, how much it stirs, and what came of it. */
  readonly well: { wanted_m3s: number; stirs_ratio: number; readonly water: WaterTick };
  readonly signals: Signals;
  readonly edges: MachineEvent[];
  /** The tray as it was last looked at. */
  readonly seen: SeenSample[];
}

const lineFluid = () => ({ density_kgm3: 1000, K_Pasn: 0.001, n_ratio: 1 });

export function createWork(scenario: Scenario, kit: Kit, hole: HoleState, holeNumber: number): Work {
  const ground = groundAt(scenario, holeNumber);
  const atBit = createParcel();
  const wallGround = createWallGround(ground, hole.dz_m, hole.cells);
  const loss = createLossWork(hole.cells);
  const place: StemPlace = { bit_m: 0, rodOutside_m: kit.rodOutside_m };
  const ringFluid = lineFluid();
  return {
    shares: tickShares(kit.temperature_C, TICK_s),
    breakPace: breakPace(kit.temperature_C, TICK_s),
    breakLoss: { polymer_kg: 0, chlorine_kg: 0 },
    place,
    hole: createHoleWork(hole),
    wallGround,
    lossInput: {
      dt_s: TICK_s,
      tick: 0,
      bit_m: 0,
      rodOutside_m: kit.rodOutside_m,
      temperature_C: kit.temperature_C,
      inflow_m3: 0,
      turning: false,
      wallShear_Pa: 0,
      friction_Pam: 0,
    },
    loss,
    ringFluid,
    swabInput: {
      lift_ms: 0,
      stem: place,
      holeWidth_m: kit.bit_m,
      fluid: ringFluid,
      flow_m3s: 0,
      balling_frac: 0,
    },
    wallInput: {
      tick: 0,
      dt_s: TICK_s,
      pressure_Pa: loss.pressure_Pa,
      surge_Pa: loss.surge_Pa,
      ground_Pa: loss.ground_Pa,
      stem: place,
      bitWidth_m: kit.bit_m,
      flow_m3s: 0,
      fluid: ringFluid,
      soaked_gL: 0,
      bentonite_gL: 0,
    },
    wall: createWallWork(wallGround, hole.dz_m),
    fallen: createParcel(),
    poured: createParcel(),
    bitBefore_m: 0,
    steelBefore_m: 0,
    pit: createPitWork(),
    pitGround: createPitGround(ground, Math.max(kit.settling.depth_m, kit.suction.depth_m)),
    flowInput: {
      kit,
      throttle_frac: 0,
      stemLength_m: 0,
      bit_m: 0,
      holeDiameter_m: kit.bit_m,
      pitLevel_m: 0,
      mouthLevel_m: 0,
      blockage_frac: 0,
      headLeft_ratio: 1,
      lost_frac: 0,
      hose: lineFluid(),
      stem: lineFluid(),
      annulus: lineFluid(),
    },
    flowResult: createFlowResult(),
    drawn: createParcel(),
    atBit,
    cut: createParcel(),
    mouth: createMouth(),
    spilled: createParcel(),
    reamed: createParcel(),
    rheology: { K_Pasn: 0.001, n_ratio: 1 },
    chamberReading: { ...createMakeup(), density_kgm3: 1000, load_frac: 0 },
    stemReading: { ...createMakeup(), density_kgm3: 1000 },
    cutGround: { porosity_frac: 0, saturation_frac: 1, fractions: [], salt_gL: 0 },
    bitInput: {
      kit,
      feed_frac: 0,
      stemLength_m: 0,
      turning: false,
      E_MPa: null,
      su_kPa: null,
      tauC_Pa: 0,
      grip_Nm: 0,
      balling_frac: 0,
      bed_m: 0,
      load_frac: 0,
      flow_m3s: 0,
      density_kgm3: 1000,
      nozzleVelocity_ms: 0,
    },
    bitResult: createBitResult(),
    grip: { length_m: 0, su_kPa: 0 },
    sweep: {
      dt_s: TICK_s,
      bit_m: 0,
      rodOutside_m: kit.rodOutside_m,
      temperature_C: kit.temperature_C,
      inflow: atBit,
      ambient_1s: 0,
      leave_m3: loss.leave_m3,
      // What the wall holds back of the fines stays in the hole: the little that the cake keeps is not taken off.
      leaveFines_frac: wallGround.d15_mm.map((d15_mm) => 1 - capture_frac(d15_mm)),
      saltIn_gL: wallGround.salt_gL,
    },
    well: { wanted_m3s: 0, stirs_ratio: 1, water: createWaterTick() },
    signals: {
      priming: false,
      primed: false,
      throttleUp: false,
      strainerShut: false,
      turning: false,
      onBottom: false,
      tight: false,
      stuck: false,
      out: false,
      sloughing: false,
      holeClosed: false,
      returns_frac: 0,
      flowing: false,
      powder: false,
      soaked_frac: 1,
      dose_ratio: 0,
      rotted_frac: 0,
    },
    edges: [],
    seen: [],
  };
}
