// The licences of the packages that the app is built from, each text once with the packages it covers.

/**
 * @typedef {{name: string, version: string, identifier?: string | null, text?: string}} PackageLicence
 */

/**
 * Many packages share one text of some thousand words, so a text for each would be larger than the app.
 * @param {PackageLicence[]} packages
 * @returns {string}
 */
export function licenceNotice(packages) {
  /** @type {Map<string, string[]>} */
  const covered = new Map();
  for (const { name, version, identifier, text } of packages) {
    const body = text?.trim() || `${identifier ?? 'No licence named'} (the package holds no text)`;
    covered.set(body, [...(covered.get(body) ?? []), `${name} ${version}`]);
  }
  const sections = [...covered].map(([body, names]) => `${names.sort().join('\n')}\n\n${body}\n`);
  return `This app is built with the packages below, under the licences that follow each list.\n\n${sections.join(`\n${'-'.repeat(72)}\n\n`)}`;
}
