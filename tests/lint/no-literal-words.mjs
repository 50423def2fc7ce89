// No words for people in templates or set on elements: they come from the typed message files, so that nothing is
// left untranslated and one reader can check them all.

/** Attributes, and props of our own parts, whose value a person sees or hears. */
const SEEN = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'caption',
  'description',
  'heading',
  'hint',
  'label',
  'legend',
  'placeholder',
  'summary',
  'text',
  'title',
]);
const SEEN_PROPERTIES = new Set(['alt', 'ariaLabel', 'innerHTML', 'innerText', 'placeholder', 'textContent', 'title']);
const DIALOGS = new Set(['alert', 'confirm', 'prompt']);

/** @type {import('eslint').Rule.RuleModule} */
export const noLiteralWords = {
  meta: {
    type: 'problem',
    messages: { words: 'Take "{{words}}" from the message files: every word a person reads lives there.' },
    schema: [],
  },
  create(context) {
    /**
     * @param {any} node
     * @param {string} words
     */
    function checkText(node, words) {
      if (!/\p{L}/u.test(words)) return;
      context.report({ node, messageId: 'words', data: { words: words.trim().slice(0, 40) } });
    }

    /** @param {any} node */
    function checkExpression(node) {
      if (!node) return;
      if (node.type === 'Literal' && typeof node.value === 'string') checkText(node, node.value);
      if (node.type === 'TemplateLiteral') {
        for (const part of node.quasis) checkText(part, part.value.cooked ?? '');
      }
      if (node.type === 'ConditionalExpression') {
        checkExpression(node.consequent);
        checkExpression(node.alternate);
      }
      if (node.type === 'LogicalExpression' || (node.type === 'BinaryExpression' && node.operator === '+')) {
        checkExpression(node.left);
        checkExpression(node.right);
      }
    }

    return /** @type {import('eslint').Rule.RuleListener} */ ({
      SvelteText(/** @type {any} */ node) {
        if (node.parent.type !== 'SvelteStyleElement' && node.parent.type !== 'SvelteScriptElement') {
          checkText(node, node.value);
        }
      },
      SvelteMustacheTag(/** @type {any} */ node) {
        const { parent } = node;
        if (
          parent.type === 'SvelteAttribute' ? SEEN.has(parent.key.name) : !/Directive|StyleElement/.test(parent.type)
        ) {
          checkExpression(node.expression);
        }
      },
      SvelteAttribute(/** @type {any} */ node) {
        if (!SEEN.has(node.key.name)) return;
        for (const part of node.value) if (part.type === 'SvelteLiteral') checkText(part, part.value);
      },
      AssignmentExpression(/** @type {any} */ node) {
        const { left } = node;
        if (left.type === 'MemberExpression' && !left.computed && SEEN_PROPERTIES.has(left.property.name)) {
          checkExpression(node.right);
        }
      },
      CallExpression(/** @type {any} */ node) {
        const { callee } = node;
        const name = callee.type === 'MemberExpression' ? callee.property.name : callee.name;
        const [first, second] = node.arguments;
        if (name === 'setAttribute' && SEEN.has(first?.value)) checkExpression(second);
        if (DIALOGS.has(name)) checkExpression(first);
      },
    });
  },
};
