// Builds the app (hosted build, and one self-contained file with --mode single) and configures Vitest.
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { fileURLToPath } from 'node:url';
import { viteSingleFile } from 'vite-plugin-singlefile';
import { defineConfig } from 'vitest/config';
import { APP_FILE } from './src/serve/build.mjs';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

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
    plugins: [svelte({ configFile: at('./svelte.config.js') }), ...(single ? [viteSingleFile()] : [])],
    build: {
      outDir: single ? at('./dist-single') : at('./dist'),
      emptyOutDir: true,
      target: 'es2022',
    },
    test: {
      root: at('.'),
      include: ['tests/**/*.test.ts'],
      exclude: ['tests/browser/**', 'node_modules/**'],
      pool: 'threads',
      maxWorkers: 2,
    },
  };
});
