// Plants a bad line for each of the house's lint rules and sees it caught, under the configuration the project uses.
import { ESLint } from 'eslint';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const eslint = new ESLint({ cwd: fileURLToPath(new URL('../..', import.meta.url)) });

/** The ids of the rules that object to a file of this name and text, without those that object to being unused. */
async function objections(filePath: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  const parseError = result.messages.find((message) => message.fatal);
  if (parseError) throw new Error(parseError.message);
  return result.messages.map((message) => message.ruleId ?? '').filter((rule) => rule.startsWith('house/'));
}

describe('import direction', () => {
  const refused: [file: string, code: string][] = [
    ['sim/fluid/a.ts', "export { t } from '../../src/words';"],
    ['sim/fluid/a.ts', "export { LESSONS } from '$lessons';"],
    ['sim/fluid/a.ts', "export { step } from '$sim';"],
    ['sim/fluid/a.ts', "export { step } from '../index';"],
    ['sim/fluid/a.ts', "export { step } from '..';"],
    ['sim/numeric/a.ts', "export { SOILS } from '../materials/soils';"],
    ['sim/drilling/a.ts', "import type { Run } from '../run/state';\nexport type R = Run;"],
    ['sim/drilling/a.ts', "export type R = import('../run/state').Run;"],
    ['sim/machine/a.ts', "export const later = () => import('../run/step');"],
    ['sim/hole/deep/a.ts', "export { step } from '../../run/step';"],
    ['sim/elsewhere/a.ts', "export { exp } from '../numeric/functions';"],
    ['sim/hole/a.ts', "import exp from '@stdlib/math-base-special-exp';\nexport const e = exp;"],
    ['sim/run/a.ts', "export { readFileSync } from 'node:fs';"],
    ['sim/pit/a.ts', "export { setup } from 'xstate';"],
    ['lessons/a.ts', "export { t } from '../src/words';"],
    ['lessons/a.ts', "export { SOILS } from '../sim/materials/soils';"],
    ['lessons/a.ts', "export { main } from './cli/main';"],
    ['lessons/a.ts', "export { readFileSync } from 'node:fs';"],
    ['src/app/a.ts', "export { step } from '../../sim/run/step';"],
    ['src/app/a.ts', "export { grade } from '../../lessons/grade';"],
    ['src/app/a.ts', "export { program } from '../../tests/house/program';"],
    ['src/app/a.ts', "export { createAppServer } from '../serve/server.mjs';"],
    ['src/app/a.ts', "export { Application } from 'pixi.js';"],
    ['src/app/a.ts', "export { readFileSync } from 'node:fs';"],
    ['src/serve/a.mjs', "export { build } from 'vite';"],
    ['src/app/A.svelte', '<script lang="ts">\n  import { step } from \'../../sim/run/step\';\n  step();\n</script>\n'],
  ];
  it.each(refused)('%s may not: %s', async (file, code) => {
    expect(await objections(file, code)).toContain('house/import-direction');
  });

  const allowed: [file: string, code: string][] = [
    [
      'sim/run/a.ts',
      "export { createMachine } from '../machine/machine';\nexport { exp } from '../numeric/functions';",
    ],
    ['sim/numeric/a.ts', "import exp from '@stdlib/math-base-special-exp';\nexport const e = exp;"],
    ['sim/index.ts', "export { step } from './run/step';"],
    ['lessons/a.ts', "export { step } from '$sim';\nexport { grade } from './grade';"],
    ['lessons/cli/a.ts', "export { grade } from '../grade';\nexport { readFileSync } from 'node:fs';"],
    [
      'src/app/a.ts',
      "export { step } from '$sim';\nexport { grade } from '$lessons';\nexport { mount } from 'svelte';",
    ],
    ['src/cutaway/a.ts', "export { Application } from 'pixi.js';"],
    ['tests/sim/fluid/a.test.ts', "export { rheologyInto } from '../../../sim/fluid/rheology';"],
  ];
  it.each(allowed)('%s may: %s', async (file, code) => {
    expect(await objections(file, code)).toEqual([]);
  });
});

describe('arithmetic that every engine does alike', () => {
  const refused = [
    'export const a = Math.exp(1);',
    'export const a = Math.pow(2, 3);',
    'export const a = Math.random();',
    "export const a = Math['exp'](1);",
    'export const { exp } = Math;',
    'export const a = [1, 4].map(Math.log);',
    'export const a = (b: number) => b ** 2;',
    'export let a = 2;\na **= 2;',
    'export const a = Date.now();',
    'export const a = new Date();',
    'export const a = performance.now();',
    'setTimeout(() => {}, 10);',
    'console.log(1);',
    'export const a = globalThis.Date;',
    'export const a = localStorage;',
    'export const a = crypto;',
    "export const a = 'a'.localeCompare('b');",
    'export const a = (1.5).toLocaleString();',
  ];
  it.each(refused)('sim and lessons refuse: %s', async (code) => {
    expect(await objections('sim/fluid/a.ts', code)).toContain('house/deterministic');
    expect(await objections('lessons/rubric/a.ts', code)).toContain('house/deterministic');
  });

  it('lets exact arithmetic and typed arrays pass', async () => {
    const code =
      'export function a(b: Record<string, number>): Float64Array {\n' +
      '  const Date = 3;\n' +
      '  return new Float64Array([Math.sqrt(b.x), Math.max(1, Math.PI), Number.EPSILON, Date]);\n}';
    expect(await objections('sim/fluid/a.ts', code)).toEqual([]);
  });

  it('lets the command line measure time and write', async () => {
    expect(await objections('lessons/cli/a.ts', 'console.log(performance.now());')).toEqual([]);
  });
});

describe('words for people', () => {
  const refused = [
    '<p>Start</p>',
    '<button aria-label="Start the pump"></button>',
    '<img alt="a pit" src="a.png" />',
    '<input placeholder="name" />',
    '<p title="what this is">{1}</p>',
    "<p>{'Start'}</p>",
    '<p>{on ? `Stop` : t("a")}</p>',
    '<p>{t("a") + " metres"}</p>',
    '<p title={`depth ${1}`}></p>',
    '<svelte:head><title>Trainer</title></svelte:head>',
    '{#if on}Start{/if}',
    '<Choice label="Start" />',
    '<text x="1">3 m</text>',
  ];
  const script = '<script lang="ts">\n  let on = true;\n  const t = (key: string) => key;\n</script>\n';
  it.each(refused)('a template refuses: %s', async (markup) => {
    expect(await objections('src/screens/A.svelte', `${script}${markup}\n`)).toContain('house/no-literal-words');
  });

  it.each([
    "<p class={on ? 'a' : 'b'} id=\"pump\">{t('a')} · {1} — %</p>",
    '<button aria-label={t("a")} aria-pressed="true" type="button">+</button>',
    '<style>\n  p {\n    color: red;\n  }\n</style>',
    '<!-- a remark --><div style="color: red" data-theme="night"></div>',
  ])('a template may: %s', async (markup) => {
    expect(await objections('src/screens/A.svelte', `${script}${markup}\n`)).toEqual([]);
  });

  it.each([
    "document.title = 'Trainer';",
    "document.body.textContent = 'It broke';",
    "document.body.setAttribute('aria-label', 'Pit');",
    "window.alert('Sure?');",
  ])('a script refuses: %s', async (code) => {
    expect(await objections('src/app/a.ts', code)).toContain('house/no-literal-words');
  });
});

it.each(['sim/fluid/utils.ts', 'src/app/sessionManager.ts', 'lessons/common.ts', 'src/app/dateHelper.ts'])(
  'no file is named for a heap of things: %s',
  async (file) => {
    expect(await objections(file, 'export const a = 1;')).toContain('house/file-name');
  },
);
