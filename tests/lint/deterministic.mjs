// Sim and lessons give the same bits on every engine: only exact arithmetic, no clock, chance, page or console.

/** Exact in every engine by the language's own standard; exp, log, pow, sin and the like are not. */
const EXACT_MATH = ['sqrt', 'abs', 'min', 'max', 'floor', 'ceil', 'round', 'trunc', 'sign', 'imul', 'fround'];
const MATH_CONSTANTS = ['PI', 'E', 'LN2', 'LN10', 'LOG2E', 'LOG10E', 'SQRT2', 'SQRT1_2'];

/** All that sim and lessons may use of what an engine offers. Whatever is not named here is refused. */
const ALLOWED_GLOBALS = new Set([
  'undefined',
  'NaN',
  'Infinity',
  'Array',
  'ArrayBuffer',
  'BigInt',
  'Boolean',
  'DataView',
  'Error',
  'Float32Array',
  'Float64Array',
  'Int8Array',
  'Int16Array',
  'Int32Array',
  'JSON',
  'Map',
  'Number',
  'Object',
  'Promise',
  'RangeError',
  'Set',
  'String',
  'Symbol',
  'SyntaxError',
  'TypeError',
  'Uint8Array',
  'Uint16Array',
  'Uint32Array',
  'isFinite',
  'isNaN',
  'parseFloat',
  'parseInt',
]);
const LOCALE_METHODS = new Set([
  'localeCompare',
  'toLocaleString',
  'toLocaleDateString',
  'toLocaleTimeString',
  'toLocaleUpperCase',
  'toLocaleLowerCase',
]);

/** @type {import('eslint').Rule.RuleModule} */
export const deterministic = {
  meta: {
    type: 'problem',
    messages: {
      math: 'Math.{{name}} differs between engines, and a replay would not be reproduced: use sim/numeric.',
      mathItself: 'Write Math.name in full, so that it is seen which function is used.',
      power: '** differs between engines, and a replay would not be reproduced: write x * x, or pow of sim/numeric.',
      global: '{{name}} is outside the model: time, chance, words and output are given to it or taken from it.',
      locale: '.{{name}}() depends on the language settings of the computer, and so would the result.',
    },
    schema: [],
  },
  create(context) {
    /** @param {import('estree').Identifier} identifier */
    function checkGlobal(identifier) {
      if (identifier.name !== 'Math') {
        if (ALLOWED_GLOBALS.has(identifier.name)) return;
        context.report({ node: identifier, messageId: 'global', data: { name: identifier.name } });
        return;
      }
      const parent = /** @type {any} */ (identifier).parent;
      if (parent.type !== 'MemberExpression' || parent.object !== identifier || parent.computed) {
        context.report({ node: identifier, messageId: 'mathItself' });
        return;
      }
      const { name } = parent.property;
      if (EXACT_MATH.includes(name) || MATH_CONSTANTS.includes(name)) return;
      context.report({ node: parent, messageId: 'math', data: { name } });
    }

    return /** @type {import('eslint').Rule.RuleListener} */ ({
      'Program:exit'(/** @type {any} */ node) {
        const scope = context.sourceCode.getScope(node);
        const ofEngine = scope.variables.filter((variable) => variable.defs.length === 0);
        for (const reference of [...scope.through, ...ofEngine.flatMap((variable) => variable.references)]) {
          // Names of types alone (Record, Readonly ...) leave nothing in the program.
          if (/** @type {any} */ (reference).isValueReference === false) continue;
          checkGlobal(/** @type {import('estree').Identifier} */ (reference.identifier));
        }
      },
      "BinaryExpression[operator='**']"(/** @type {any} */ node) {
        context.report({ node, messageId: 'power' });
      },
      "AssignmentExpression[operator='**=']"(/** @type {any} */ node) {
        context.report({ node, messageId: 'power' });
      },
      'MemberExpression[computed=false]'(/** @type {any} */ node) {
        const { name } = node.property;
        if (LOCALE_METHODS.has(name)) context.report({ node, messageId: 'locale', data: { name } });
      },
    });
  },
};
