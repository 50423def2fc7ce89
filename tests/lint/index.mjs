// The house's own lint rules, as a plugin.
import { deterministic } from './deterministic.mjs';
import { fileName } from './file-name.mjs';
import { importDirection } from './import-direction.mjs';
import { noLiteralWords } from './no-literal-words.mjs';

/** @type {import('eslint').ESLint.Plugin} */
export const house = {
  meta: { name: 'house' },
  rules: {
    'import-direction': importDirection,
    deterministic,
    'no-literal-words': noLiteralWords,
    'file-name': fileName,
  },
};
