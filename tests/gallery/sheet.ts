// The page of the gallery: pictures in groups; of the states only numbers, and the key folded at the end.

export interface Shot {
  readonly group: string;
  readonly says: string;
  readonly file: string;
}

const safe = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

export function sheetOf(shots: readonly Shot[], key: readonly string[]): string {
  const groups = [...new Set(shots.map(({ group }) => group))];
  const figures = (group: string): string =>
    shots
      .filter((shot) => shot.group === group)
      .map(
        ({ says, file }) =>
          `<figure><a href="${safe(file)}"><img src="${safe(file)}" alt="" loading="lazy"></a><figcaption>${safe(says)}</figcaption></figure>`,
      )
      .join('\n');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Gallery</title>
<style>
body { font-family: sans-serif; margin: 1rem; background: #ddd; color: #222; }
div { display: flex; flex-wrap: wrap; gap: 1rem; align-items: start; }
figure { margin: 0; } img { max-width: 30rem; max-height: 40rem; border: 1px solid #888; display: block; }
</style></head><body>
${groups.map((group) => `<h2>${safe(group)}</h2><div>${figures(group)}</div>`).join('\n')}
<details><summary>Which state is which</summary><ol>${key.map((says) => `<li>${safe(says)}</li>`).join('')}</ol></details>
</body></html>
`;
}
