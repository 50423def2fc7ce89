// Hands events to the machine and keeps its value in the state.

import { valueAfter, type MachineEvent } from '../machine/machine';
import type { Run } from './run';

export function send(run: Run, event: MachineEvent): void {
  run.state.machine = valueAfter(run.state.machine, event);
}
