// Our own small line drawings for the hands, on a 24 by 24 field. Lines take the colour of the words beside them.

export interface Line {
  readonly d: string;
  /** Closed shapes that are filled rather than drawn as a line. */
  readonly fill?: boolean;
}

const line = (d: string): Line => ({ d });
const fill = (d: string): Line => ({ d, fill: true });
const STEM = line('M12 3v18');

export const DRAWINGS = {
  turn: [line('M12 3v5M12 16v5'), line('M5 12c0-5 14-5 14 0s-14 5-14 0'), fill('M3 9l2 4 3-3z')],
  feed: [fill('M7 3h10l2 6H5z'), line('M12 9v8'), line('M8 14l4 4 4-4M5 21h14')],
  lift: [STEM, line('M3 21h18'), line('M18 17V7M15 10l3-4 3 4')],
  lower: [STEM, line('M3 21h18'), line('M18 6v10M15 13l3 4 3-4')],
  addRod: [line('M9 3v7M9 13v8M7 10h4v3H7z'), line('M15 8h6M18 5v6')],
  removeRod: [line('M9 3v6M9 14v7M7 14h4'), line('M15 8h6')],
  workStem: [STEM, line('M3 8l3-4 3 4M6 5v14M3 16l3 4 3-4'), line('M16 12h4')],
  stopDrilling: [line('M6 21V4'), fill('M6 4h12l-3 4 3 4H6z'), line('M3 21h18')],
  prime: [line('M4 3h10l-3 5H7zM9 8v4'), line('M5 12h8v8H5zM13 15h6v5'), line('M7 16c1-1 3-1 4 0')],
  throttle: [line('M4 19a9 9 0 0 1 16 0'), line('M12 19l5-9'), fill('M10.5 19a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0-3 0')],
  lockOpen: [fill('M5 11h14v10H5z'), line('M8 11V6a4 4 0 0 1 8-1')],
  lockClosed: [fill('M5 11h14v10H5z'), line('M8 11V7a4 4 0 0 1 8 0v4')],
  mend: [line('M14 4a5 5 0 0 0-4 7L3 18l3 3 7-7a5 5 0 0 0 7-4l-3 1-3-3 1-3z')],
  ditch: [line('M2 8h4l3 8h6l3-8h4'), line('M9 3l-2 3M13 3l-2 3M17 3l-2 3'), line('M10 20h8M16 18l3 2-3 2')],
  hook: [line('M14 2v12a4 4 0 0 1-8 0'), line('M6 14l-2 3M6 14l3 2'), line('M3 22h18')],
  stopPump: [line('M12 3a9 9 0 1 0 .01 0'), line('M6 6l12 12')],
  readStick: [line('M12 2v20M12 5h4M12 9h4M12 13h4M12 17h4'), line('M2 13c2-2 4-2 6 0M18 13c1-1 3-1 4 0')],
  addWater: [line('M4 8h13l-2 12H6z'), line('M4 8c1-7 12-7 13 0'), line('M6 13c3-2 6 2 9 0'), line('M20 12v6')],
  topUp: [line('M3 4h9l-1 7H5z'), line('M12 6c4 0 5 3 5 6'), line('M14 13h-3v9M20 13h3v9'), line('M17 15v5')],
  digOut: [line('M19 3l-9 9'), line('M17 2l5 5'), fill('M10 11l3 3c-1 5-5 7-9 7c0-4 2-8 6-10z')],
  site: [line('M3 5h18v14H3z'), line('M3 14c5-3 7 2 10-1s4-2 8-1'), fill('M9 11V6l4 1.500-4 1.500z')],
  setOut: [line('M2 8h4v10h5v-6h2v6h5V8h4'), line('M12 2v5M9.500 5L12 8l2.500-3')],
  fillPit: [
    line('M3 10h3v10h12V10h3'),
    line('M6 15c2-2 4 1 6 0s4-2 6 0'),
    line('M12 2v7M9.500 6.500L12 9l2.500-2.500'),
  ],
  clearStrainer: [
    line('M7 9h10v11H7zM7 13h10M7 16.5h10M10.3 9v11M13.7 9v11'),
    line('M12 9V3'),
    line('M3 6l2 2M21 6l-2 2'),
  ],
  setStrainer: [line('M6 12h8v8H6zM6 16h8M10 12v8M10 12V3'), line('M19 8v11M17 10l2-3 2 3M17 17l2 3 2-3')],
  addPowder: [
    line('M6 3h9l2 7H4z'),
    line('M8 3l1 4M13 3l-1 4'),
    fill(
      'M7 13h1.6v1.6H7zM12 13h1.6v1.6H12zM9.5 16h1.6v1.6H9.5zM14 17h1.6v1.6H14zM7 19h1.6v1.6H7zM11.5 20h1.6v1.6H11.5z',
    ),
  ],
  stir: [line('M15 2L9 16'), fill('M7 14l5 2-2 6-5-2z'), line('M3 13c2-3 5-3 7-2M14 15c4 1 7 1 7-2')],
  feelFluid: [
    line('M3 6c5-1 8 0 11 3M3 19c5 1 8 0 11-3'),
    line('M14 9c2 2 2 5 0 7'),
    line('M14 9c-2 2-2 5 0 7'),
    line('M19 12h2'),
  ],
  funnelTest: [
    line('M3 3h14l-5 8v4H8v-4z'),
    fill('M9 17h2v2H9zM9 21h2v1H9z'),
    line('M18 14a4 4 0 1 0 .01 0M18 16v2h2'),
  ],
  catchSample: [
    line('M3 5h8l2 4'),
    line('M7 14h14l-3 6h-8z'),
    fill('M12 11h1.8v1.8H12zM15 9h1.8v1.8H15zM16 12h1.8v1.8H16z'),
  ],
  nameSample: [line('M3 5h10l8 8-8 8-10-10z'), fill('M6 8h2.5v2.5H6z')],
  logLayer: [
    line('M6 2h12v20H6zM6 8h12M6 15h12'),
    fill('M9 10.5h2v1.6H9zM13 12h2v1.6h-2zM8 18h2v1.6H8zM14 18h2v1.6h-2z'),
  ],
  note: [line('M5 3h14v18H5zM8 8h8M8 12h8M8 16h5')],
  planWell: [
    line('M4 3h12l4 4v14H4zM16 3v4h4'),
    line('M8 11h3M8 14h3M8 17h3'),
    line('M14 10v8M12.500 14h3M12.500 16h3'),
  ],
  pullOut: [line('M3 21h6M15 21h6M9 21v-5M15 21v-5'), line('M12 20V6M8 9l4-5 4 5')],
  joinCasing: [line('M8 3h8v7H8zM8 14h8v7H8z'), line('M6.500 10h11v4h-11z')],
  runCasing: [line('M3 7h4v14M21 7h-4v14'), line('M9.500 2h5v14h-5zM11 11h2M11 13.500h2'), line('M9 19l3 3 3-3')],
  workCasing: [line('M9.500 3h5v18h-5zM11 15h2M11 17.500h2'), line('M3 9l2.500-3L8 9M5.500 6v12M3 15l2.500 3L8 15')],
  pourPack: [
    line('M2 3l8 3-2 5-6-2z'),
    fill('M10 9h2v2h-2zM12.500 12h2v2h-2zM10.500 14.500h2v2h-2zM13 17h2v2h-2zM10.500 19.500h2v2h-2z'),
    line('M8 13v9M17 8v14M21 8v14'),
  ],
  sound: [
    line('M12 2v15M9 2h6'),
    fill('M10 17h4l-2 4z'),
    line('M4 21h3M17 21h3M15.500 6H18M15.500 10H18M15.500 14H18'),
  ],
  placeSeal: [line('M4 3v18M20 3v18'), line('M9 3v18M15 3v18'), fill('M5 9h3v5H5zM16 9h3v5h-3z')],
  backfill: [line('M3 20c3-6 6-6 9 0'), line('M21 4l-7 7'), fill('M14 9l3 3c-1 4-4 5-7 5c0-4 1-6 4-8z')],
  develop: [
    line('M8 2v20M16 2v20'),
    line('M8 10h8M8 13h8M12 10V2'),
    line('M3 15l-1.500 2L3 19M2 17h4M21 15l1.500 2-1.500 2M22 17h-4'),
  ],
  breakPolymer: [line('M9 3h6M10 3v6L5 19c-1 2 0 3 2 3h10c2 0 3-1 2-3L14 9V3'), line('M8 15l3 2 2-3 3 3')],
  dipWell: [
    line('M8 6v16M16 6v16'),
    line('M12 2v11'),
    line('M8 16c2-2 3 1 4 0s2-2 4 0'),
    fill('M10.800 12h2.400v3h-2.400z'),
  ],
  yieldTest: [line('M4 3v17h17'), line('M5 6c3 0 3 9 8 10h2c2 0 2-7 5-8')],
  disinfect: [line('M12 3c4 5 6 8 6 11a6 6 0 0 1-12 0c0-3 2-6 6-11z'), line('M9 14l2 2.500L15 12')],
  headWorks: [line('M2 20h20M5 20v-3h14v3'), line('M9 17V7h5v10M14 9h5v3M9 10L4 4')],
  record: [line('M5 2h14v20H5z'), line('M8 6h8M8 10h5M8 14h8M8 18h5'), line('M16 9v2')],
  handOver: [line('M2 9h5l4 3h4c2 0 2 3 0 3h-4'), line('M2 18h6l3 2h6l5-6'), line('M15 2v6M12 5h6')],
  testPlot: [line('M4 3v17h17'), line('M5 6c3 0 3 9 8 10h2c2 0 2-7 5-8')],
  wait: [line('M6 3h12M6 21h12M7 3c0 6 10 12 10 18M17 3c0 6-10 12-10 18'), fill('M9 19h6v2H9z')],
} as const satisfies Readonly<Record<string, readonly Line[]>>;

export type DrawingName = keyof typeof DRAWINGS;
