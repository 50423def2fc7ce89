// One concept a file, named with the trade's word: a file named for a heap of things collects one.
import { basename } from 'node:path';

const HEAPS = /^(utils?|helpers?|common|manager|misc|shared|stuff)\b|(utils?|helpers?|manager)$/i;

/** @type {import('eslint').Rule.RuleModule} */
export const fileName = {
  meta: {
    type: 'problem',
    messages: { heap: 'Name the file for the one thing it holds: "{{name}}" names a heap and will grow into one.' },
    schema: [],
  },
  create(context) {
    const name = basename(context.filename).replace(/\..*$/, '');
    return {
      Program(node) {
        if (HEAPS.test(name)) context.report({ node, messageId: 'heap', data: { name } });
      },
    };
  },
};
