// Hands a text to the browser as a file to keep, and the page itself as one file.

export function saveTextAs(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the address only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A name that every file system takes: letters, digits, hyphens. */
export function runFileName(lesson: string, who: string, started_ms: number): string {
  const day = new Date(started_ms).toISOString().slice(0, 16).replace(/[:T]/g, '-');
  return `${lesson}-${who}-${day}`.replace(/[^\w-]+/g, '-') + '.json';
}

/** True where the page was opened from disk, and so is the one file already. */
export function isOnDisk(): boolean {
  return location.protocol === 'file:';
}

/** The page as it was before it started: its scripts and styles, without what they have built since. */
export function pageAsFile(page: Document): string {
  const root = page.documentElement.cloneNode(true) as HTMLElement;
  for (const name of Object.keys(root.dataset)) delete root.dataset[name];
  const app = root.querySelector('#app');
  app?.replaceChildren();
  for (const child of [...(root.querySelector('body')?.children ?? [])]) {
    if (child !== app && child.tagName !== 'SCRIPT') child.remove();
  }
  return `<!doctype html>\n${root.outerHTML}\n`;
}
