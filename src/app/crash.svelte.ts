// What went wrong, for the crash page. The first error counts; those after it mostly follow from it.

export interface CrashReport {
  readonly message: string;
  readonly stack: string;
  readonly where: string;
  readonly when: string;
}

class Crash {
  report: CrashReport | null = $state.raw(null);

  catch(error: unknown): void {
    if (this.report || isHarmless(error)) return;
    this.report = this.reportOf(error);
  }

  reportOf(error: unknown): CrashReport {
    return {
      message: error instanceof Error ? `${error.name}: ${error.message}` : String(error),
      stack: error instanceof Error ? (error.stack ?? '') : '',
      where: location.hash,
      when: new Date().toISOString(),
    };
  }

  /** Listens for errors that no screen caught. */
  watch(): void {
    window.addEventListener('error', (event) => this.catch(event.error ?? event.message));
    window.addEventListener('unhandledrejection', (event) => this.catch(event.reason));
  }
}

/** Browsers report this one when a layout takes two rounds; nothing is broken. */
function isHarmless(error: unknown): boolean {
  return String(error).includes('ResizeObserver loop');
}

export const crash = new Crash();
