// The casing as it is: what is joined, where its lower end stands, how full it is, whether it is whole.

/**
 * none: nothing joined; air: joined, hanging over the mouth; free: in the hole, it can go on down; hung: held by a tight wall or by
 * fill; floating: too light to sink; landed: as deep as planned; set: the crew has begun to fill round it, it stays where it is.
 */
export type CasingLook = 'none' | 'air' | 'free' | 'hung' | 'floating' | 'landed' | 'set';

export interface CasingState {
  look: CasingLook;
  /** Pieces joined so far, the last one cut to length, and how long they are together, m. */
  joined: number;
  length_m: number;
  /** Tick at which the last joint was pushed in; -1: none. */
  glued_tick: number;
  /** Strength of the weakest joint as a share of the pipe's, 0 to 1: less where it was loaded before it had set. */
  joint_frac: number;
  /** Depth of the lower end, m; 0: not in the hole. */
  shoe_m: number;
  /** Height of the fluid inside above the lower end, m. */
  inside_m: number;
  /** Diameter of a full rod that takes as much room in the hole as the casing does now, m: the less, the fuller it is. */
  steel_m: number;
  /** A lowering under way: metres left and speed. */
  motion_m: number;
  motion_ms: number;
  /** The crew pours fluid into it as it goes down. */
  filling: boolean;
  /** How far it has been worked down through fill, m. */
  worked_m: number;
  /** The pipe has parted at its screen or at a joint: sand comes in there. */
  snapped: boolean;
}

export const createCasing = (): CasingState => ({
  look: 'none',
  joined: 0,
  length_m: 0,
  glued_tick: -1,
  joint_frac: 1,
  shoe_m: 0,
  inside_m: 0,
  steel_m: 0,
  motion_m: 0,
  motion_ms: 0,
  filling: false,
  worked_m: 0,
  snapped: false,
});
