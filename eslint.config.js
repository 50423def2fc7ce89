// Lint: the common rules for TypeScript and Svelte, and the house's own rules from tests/lint.
import globals from 'globals';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';
import { house } from './tests/lint/index.mjs';

export default ts.config(
  { ignores: ['dist/', 'dist-single/', 'node_modules/', 'test-results/', '.cache/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  ...svelte.configs.prettier,
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
  },
  {
    plugins: { house },
    rules: {
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-var': 'error',
      'prefer-const': 'error',
      'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
      '@typescript-eslint/consistent-type-imports': [
        'error',
        { fixStyle: 'separate-type-imports', disallowTypeAnnotations: false },
      ],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrorsIgnorePattern: '^_' },
      ],
      'house/import-direction': 'error',
      'house/file-name': 'error',
    },
  },
  {
    files: ['**/*.svelte'],
    rules: {
      // What a component is given, and what follows from it, changes without being assigned.
      'prefer-const': 'off',
      'svelte/prefer-const': 'error',
      // It does not see every warning that svelte-check sees, and calls the remarks that quiet those unused.
      'svelte/no-unused-svelte-ignore': 'off',
    },
  },
  {
    files: ['sim/**/*.ts', 'lessons/**/*.ts'],
    ignores: ['lessons/cli/**'],
    rules: { 'house/deterministic': 'error' },
  },
  {
    files: ['src/**/*.svelte', 'src/**/*.ts'],
    languageOptions: { globals: globals.browser },
    rules: { 'house/no-literal-words': 'error' },
  },
  // Tables of messages, and of published values to check against, are as long as there are things to say.
  { files: ['src/words/**', 'lessons/words/**', 'tests/reference/**'], rules: { 'max-lines': 'off' } },
);
