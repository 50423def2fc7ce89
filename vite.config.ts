// Builds the app (hosted build, and one self-contained file with --mode single) and configures Vitest.
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { normalizePath, type HtmlTagDescriptor, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';
import { defineConfig } from 'vitest/config';
import { APP_FILE } from './src/serve/build.mjs';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The page's icon and manifest: links in the hosted build; in the one file the icon itself, for it fetches nothing. */
function pageIcons(single: boolean): Plugin {
  const link = (attrs: Record<string, string>): HtmlTagDescriptor => ({ tag: 'link', attrs, injectTo: 'head' });
  const svg = (): string => readFileSync(at('./static/icon.svg'), 'utf8');
  return {
    name: 'page-icons',
    transformIndexHtml: {
      order: 'post',
      handler: () =>
        single
          ? [link({ rel: 'icon', href: `data:image/svg+xml,${encodeURIComponent(svg())}` })]
          : [
              link({ rel: 'icon', type: 'image/svg+xml', href: './icon.svg' }),
              link({ rel: 'apple-touch-icon', href: './icon-192.png' }),
              link({ rel: 'manifest', href: './manifest.webmanifest' }),
            ],
    },
  };
}

/** Modules of sim and lessons only name things; none does anything when it is loaded. */
function isPure(id: string): boolean {
  const path = normalizePath(id);
  return ['./sim/', './lessons/'].some((folder) => path.startsWith(normalizePath(at(folder))));
}

/** The cutaway asks for WebGL, or else for the plain canvas: the third way of drawing would be weight without use. */
function withoutUnusedRenderer(): Plugin {
  const stub = '\0unused-renderer';
  return {
    name: 'without-unused-renderer',
    enforce: 'pre',
    resolveId: (id) => (id.endsWith('/WebGPURenderer.mjs') ? stub : null),
    load: (id) =>
      id === stub ? "export class WebGPURenderer { constructor() { throw new Error('not built in'); } }" : null,
  };
}

// Only where tests run: a build need not read the test runner.
const order = process.env.VITEST ? { sequencer: (await import('./tests/run/longFirst.ts')).LongFirst } : {};

export default defineConfig(({ mode }) => {
  const single = mode === 'single';
  return {
    root: at('./src'),
    base: './',
    publicDir: single ? false : at('./static'),
    resolve: {
      alias: { $sim: at('./sim/index.ts'), $lessons: at('./lessons/index.ts') },
    },
    define: { __APP_FILE__: JSON.stringify(APP_FILE) },
    plugins: [
      svelte({ configFile: at('./svelte.config.js') }),
      withoutUnusedRenderer(),
      pageIcons(single),
      ...(single ? [viteSingleFile()] : []),
    ],
    build: {
      outDir: single ? at('./dist-single') : at('./dist'),
      emptyOutDir: true,
      target: 'es2022',
      // So the first screen, which lists the lessons, need not fetch the physics behind the same door.
      // How long the plugins took is of no use to those who start the app.
      rolldownOptions: { treeshake: { moduleSideEffects: (id) => !isPure(id) }, checks: { bundlerTimings: false } },
      // Made into a text by src/serve/build.mjs.
      license: { fileName: 'licences.json' },
      // The drawing library is large, but it lies in a chunk of its own that the first screen does not fetch.
      chunkSizeWarningLimit: 800,
    },
    test: {
      root: at('.'),
      maxWorkers: 2,
      testTimeout: 30_000,
      hookTimeout: 30_000,
      sequence: order,
      projects: [
        {
          // Node runs these files as they are, by tsx: through Vite's module runner each call of another file's function
          // costs a look-up, and a whole well takes two to three times as long.
          extends: true,
          test: {
            name: 'model',
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/browser/**', 'tests/src/**'],
            pool: 'forks',
            // The model is pure: its modules can be shared by all files of a worker, and are read once.
            isolate: false,
            execArgv: ['--import', 'tsx'],
            env: { TSX_TSCONFIG_PATH: at('./tests/tsconfig.json') },
            experimental: { viteModuleRunner: false, nodeLoader: false },
          },
        },
        {
          // These need Svelte's compiler, which the module runner brings.
          extends: true,
          test: { name: 'app', include: ['tests/src/**/*.test.ts'], pool: 'threads' },
        },
      ],
    },
  };
});
