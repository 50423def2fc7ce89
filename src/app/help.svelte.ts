// Whether the help lies open over the screen. Any screen may open it.

class HelpState {
  open = $state(false);
}

export const helpState = new HelpState();

export function openHelp(): void {
  helpState.open = true;
}
