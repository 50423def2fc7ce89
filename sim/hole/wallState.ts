// What has become of the wall, cell by cell: what it drank, the membrane on it, how long it has stood, how near it is to falling.
// Plain typed arrays: state, hashed and saved. The radius itself is in HoleState.radius_m.

export interface WallState {
  /** Seconds since the cell was cut; 0 where there is no hole. */
  open_s: Float64Array;
  /** Fluid that has gone into the ground, m3 per metre of hole: it fills the pores from the wall outwards. Never below 0. */
  lost_m2: Float64Array;
  /** Membrane or cake on the wall, m, and its resistance, thickness over conductivity, s. */
  cake_m: Float64Array;
  cakeResistance_s: Float64Array;
  /** Seconds that ground above the water table has been wetted from the hole: its capillary cohesion goes. */
  wetted_s: Float64Array;
  /** How far clay has come inwards, by squeeze and by swelling, m: radius as cut or washed less these is the radius now. */
  squeezed_m: Float64Array;
  swollen_m: Float64Array;
  /** Support over need at the last look, -2 to 9; 9 where nothing needs support. */
  stability_ratio: Float64Array;
  /** 1 where the cell is sloughing now (with its own hysteresis), else 0. */
  sloughing: Float64Array;
  /** Flow per head of one metre length of wall, m2/s per m of head: from the last look, see loss. */
  conductance_ms: Float64Array;
}

export function createWallState(cells: number): WallState {
  return {
    open_s: new Float64Array(cells),
    lost_m2: new Float64Array(cells),
    cake_m: new Float64Array(cells),
    cakeResistance_s: new Float64Array(cells),
    wetted_s: new Float64Array(cells),
    squeezed_m: new Float64Array(cells),
    swollen_m: new Float64Array(cells),
    stability_ratio: new Float64Array(cells).fill(9),
    sloughing: new Float64Array(cells),
    conductance_ms: new Float64Array(cells),
  };
}
