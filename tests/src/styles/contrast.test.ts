// The themes keep their promise: text at 7:1, lines and other graphics at 3:1, on every ground they may stand on.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast } from '../wcag';

const css = readFileSync(new URL('../../../src/styles/theme.css', import.meta.url), 'utf8');

function themeOf(name: string): Record<string, string> {
  const block = new RegExp(`\\[data-theme='${name}'\\] \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
  return Object.fromEntries([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, key, value]) => [key, value]));
}

const GROUNDS = ['paper', 'sheet', 'deep'];
const TEXTS = ['ink', 'muted', 'accent-text', 'ok', 'warn', 'danger', 'water'];
const GRAPHICS = ['line', 'accent', 'focus'];

describe.each(['paper', 'night', 'sun'])('theme %s', (name) => {
  const theme = themeOf(name);

  it('names every colour', () => {
    expect(Object.keys(theme).length).toBe(18);
  });

  it.each(TEXTS)('%s is text at 7:1', (text) => {
    for (const ground of GROUNDS) expect(contrast(theme[text], theme[ground]), ground).toBeGreaterThanOrEqual(7);
  });

  it.each(GRAPHICS)('%s is seen at 3:1', (line) => {
    for (const ground of GROUNDS) expect(contrast(theme[line], theme[ground]), ground).toBeGreaterThanOrEqual(3);
  });

  it('text on fills is at 7:1', () => {
    expect(contrast(theme['on-accent'], theme['accent'])).toBeGreaterThanOrEqual(7);
    expect(contrast(theme['on-band'], theme['band'])).toBeGreaterThanOrEqual(7);
    expect(contrast(theme['ink'], theme['accent-wash'])).toBeGreaterThanOrEqual(7);
    expect(contrast(theme['ink'], theme['water-wash'])).toBeGreaterThanOrEqual(7);
  });
});
