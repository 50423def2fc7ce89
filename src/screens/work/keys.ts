// The keys of the work screen. The app's list of keys takes them in; the help shows them, listenKeys obeys them.
import type { KeyBinding } from '../../app/keys';

export const WORK_KEYS = [
  { id: 'pause', keys: ['p'], place: 'work', does: 'work.key.pause' },
  { id: 'step', keys: ['s'], place: 'work', does: 'work.pace.step' },
  { id: 'pace1', keys: ['1'], place: 'work', does: 'work.pace.name.1' },
  { id: 'pace5', keys: ['2'], place: 'work', does: 'work.pace.name.5' },
  { id: 'pace20', keys: ['3'], place: 'work', does: 'work.pace.name.20' },
  { id: 'pace60', keys: ['4'], place: 'work', does: 'work.pace.name.60' },
  { id: 'clock', keys: ['w'], place: 'work', does: 'work.key.clock' },
  { id: 'turn', keys: ['t'], place: 'work', does: 'work.key.turn' },
  { id: 'feedMore', keys: ['f'], place: 'work', does: 'work.feed.more' },
  { id: 'feedLess', keys: ['d'], place: 'work', does: 'work.feed.less' },
  { id: 'lift', keys: ['u'], place: 'work', does: 'work.key.lift' },
  { id: 'liftMore', keys: ['i'], place: 'work', does: 'work.key.liftMore' },
  { id: 'lower', keys: ['j'], place: 'work', does: 'work.key.lower' },
  { id: 'lowerMore', keys: ['k'], place: 'work', does: 'work.key.lowerMore' },
  { id: 'addRod', keys: ['a'], place: 'work', does: 'work.addRod' },
  { id: 'removeRod', keys: ['r'], place: 'work', does: 'work.removeRod' },
  { id: 'workStem', keys: ['x'], place: 'work', does: 'work.workStem' },
  { id: 'stopDrilling', keys: ['e'], place: 'work', does: 'work.stopDrilling' },
  { id: 'prime', keys: ['o'], place: 'work', does: 'work.prime' },
  { id: 'throttleMore', keys: ['g'], place: 'work', does: 'work.throttle.more' },
  { id: 'throttleLess', keys: ['b'], place: 'work', does: 'work.throttle.less' },
  { id: 'stopPump', keys: ['q'], place: 'work', does: 'work.stopPump' },
  { id: 'readStick', keys: ['5'], place: 'work', does: 'work.readStick' },
  { id: 'addWater', keys: ['6'], place: 'work', does: 'work.addWater' },
  { id: 'topUp', keys: [';'], place: 'work', does: 'work.topUp' },
  { id: 'digOut', keys: ['7'], place: 'work', does: 'work.digOut' },
  { id: 'clearStrainer', keys: ['8'], place: 'work', does: 'work.clearStrainer' },
  { id: 'setStrainer', keys: ['9'], place: 'work', does: 'work.setStrainer' },
  { id: 'site', keys: ['/'], place: 'work', does: 'site.hand' },
  { id: 'setOut', keys: [','], place: 'work', does: 'work.setOut' },
  { id: 'fillPit', keys: ['.'], place: 'work', does: 'work.fillPit' },
  { id: 'addPowder', keys: ['m'], place: 'work', does: 'work.addPowder' },
  { id: 'stir', keys: ['y'], place: 'work', does: 'work.stir' },
  { id: 'feelFluid', keys: ['v'], place: 'work', does: 'work.feelFluid' },
  { id: 'funnelTest', keys: ['z'], place: 'work', does: 'work.funnelTest' },
  { id: 'catchSample', keys: ['c'], place: 'work', does: 'work.catchSample' },
  { id: 'nameSample', keys: ['n'], place: 'work', does: 'work.nameSample' },
  { id: 'logLayer', keys: ['l'], place: 'work', does: 'work.logLayer' },
  { id: 'note', keys: ['h'], place: 'work', does: 'work.note' },
  { id: 'planWell', keys: ['='], place: 'work', does: 'work.planWell' },
  { id: 'joinCasing', keys: ["'"], place: 'work', does: 'work.joinCasing' },
  { id: 'pullOut', keys: ['-'], place: 'work', does: 'work.pullOut' },
  { id: 'letGo', keys: ['Escape'], place: 'work', does: 'work.key.letGo' },
  { id: 'hints', keys: ['0'], place: 'work', does: 'work.hint.ask' },
  { id: 'lens', keys: ['*'], place: 'work', does: 'work.cutaway.lens' },
  { id: 'lensWall', keys: ['!'], place: 'work', does: 'work.cutaway.lensWall' },
  { id: 'wider', keys: ['>'], place: 'work', does: 'work.cutaway.wider' },
  { id: 'narrower', keys: ['<'], place: 'work', does: 'work.cutaway.narrower' },
] as const satisfies readonly KeyBinding[];

/** Keys once the rods are out: stem, pump and fluid are done with, their letters serve the well. */
export const WELL_KEYS = [
  { id: 'runCasing', keys: ['r'], place: 'well', does: 'work.runCasing' },
  { id: 'workCasing', keys: ['x'], place: 'well', does: 'work.workCasing' },
  { id: 'pourPack', keys: ['f'], place: 'well', does: 'work.pourPack' },
  { id: 'sound', keys: ['d'], place: 'well', does: 'work.sound' },
  { id: 'placeSeal', keys: ['b'], place: 'well', does: 'work.placeSeal' },
  { id: 'backfill', keys: ['k'], place: 'well', does: 'work.backfill' },
  { id: 'develop', keys: ['v'], place: 'well', does: 'work.develop' },
  { id: 'breakPolymer', keys: ['m'], place: 'well', does: 'work.breakPolymer' },
  { id: 'dipWell', keys: ['u'], place: 'well', does: 'work.dipWell' },
  { id: 'yieldTest', keys: ['t'], place: 'well', does: 'work.yieldTest' },
  { id: 'testPlot', keys: ['z'], place: 'well', does: 'work.testPlot' },
  { id: 'disinfect', keys: ['i'], place: 'well', does: 'work.disinfect' },
  { id: 'headWorks', keys: ['a'], place: 'well', does: 'work.headWorks' },
  { id: 'record', keys: ['o'], place: 'well', does: 'work.record' },
  { id: 'handOver', keys: ['e'], place: 'well', does: 'work.handOver' },
] as const satisfies readonly KeyBinding[];

export type WorkKeyId = (typeof WORK_KEYS | typeof WELL_KEYS)[number]['id'];

/** The key of a hand's shortcut, as aria-keyshortcuts wants it. */
export function keyOf(shortcut: string | undefined): string | undefined {
  return [...WORK_KEYS, ...WELL_KEYS].find((binding) => binding.id === shortcut)?.keys[0];
}
