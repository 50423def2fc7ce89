// One source file with all it imports as a plain script, to be run in a page that has nothing else.
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { fileURLToPath } from 'node:url';
import { build, type Rollup } from 'vite';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** The script text; its exports hang on the global of the given name. */
export async function bundleForPage(entry: string, globalName: string): Promise<string> {
  const result = await build({
    configFile: false,
    root: at('.'),
    publicDir: false,
    logLevel: 'error',
    // Styles of components come with their scripts.
    plugins: [svelte({ configFile: at('svelte.config.js'), emitCss: false })],
    resolve: { alias: { $sim: at('sim/index.ts'), $lessons: at('lessons/index.ts') } },
    build: { write: false, lib: { entry: at(entry), formats: ['iife'], name: globalName, fileName: 'page' } },
  });
  const outputs = (Array.isArray(result) ? result : [result]) as Rollup.RollupOutput[];
  const chunk = outputs[0].output.find((part) => part.type === 'chunk');
  if (!chunk || chunk.type !== 'chunk') throw new Error(`nothing was built from ${entry}`);
  return chunk.code;
}
