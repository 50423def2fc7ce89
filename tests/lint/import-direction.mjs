// Who may import what: src -> lessons -> sim, the folder order inside sim, the doors, and which packages where.
import { dirname, join, relative, sep } from 'node:path';

/** A folder of sim imports only itself and those before it: physics first, then the machine, then the run. */
const SIM_ORDER = [
  'numeric',
  'materials',
  'ground',
  'fluid',
  'hydraulics',
  'hole',
  'pit',
  'drilling',
  'completion',
  'well',
  'machine',
  'run',
];

/** @type {[zone: RegExp, allowed: RegExp, reason: string][]} */
const PACKAGES = [
  [
    /^sim\/numeric\//,
    /^(@stdlib\/.+|seedrandom(\/.+)?)$/,
    'only special functions and the seeded stream come from outside',
  ],
  [/^sim\/machine\//, /^xstate$/, 'only the statechart library serves the machine'],
  [/^sim\//, /^$/, 'the physics stands on sim/numeric alone, so that every engine gives the same bits'],
  [/^lessons\/cli\//, /^(node:.+|valibot)$/, 'the command line needs Node and the checks of files, nothing else'],
  [/^lessons\//, /^(valibot|fflate)$/, 'lessons run in a page, a worker and Node alike'],
  [/^src\/serve\//, /^node:/, 'it runs on a fresh clone, before anything is installed'],
  [
    /^src\/cutaway\//,
    /^(pixi\.js|svelte)(\/.+)?$/,
    'the drawing needs the drawing library; everything else reaches it as plain data',
  ],
  [
    /^src\/classroom\/qr\//,
    /^(svelte|qrcode-generator|jsqr)(\/.+)?$/,
    'only the QR codes need these libraries, which are loaded when a code is drawn or read',
  ],
  [
    /^src\//,
    /^(svelte|valibot|idb|uplot|virtual:.+)(\/.+)?$/,
    'the page must stay small; the drawing library belongs to src/cutaway, which is loaded late',
  ],
];

/** @type {import('eslint').Rule.RuleModule} */
export const importDirection = {
  meta: {
    type: 'problem',
    messages: {
      direction: '{{from}} may not import {{to}}: {{reason}}.',
      package: '{{from}} may not import the package "{{to}}": {{reason}}.',
    },
    schema: [],
  },
  create(context) {
    const file = relative(context.cwd, context.filename).split(sep).join('/');
    const zone = file.split('/')[0];
    if (!['sim', 'lessons', 'src'].includes(zone)) return {};

    /** @param {import('estree').Node | null | undefined} source */
    function check(source) {
      if (source?.type !== 'Literal' || typeof source.value !== 'string') return;
      const target = resolve(file, source.value);
      if (target === null) {
        const rule = PACKAGES.find(([where]) => where.test(file));
        if (rule && !rule[1].test(source.value)) {
          const data = { from: folderOf(file), to: source.value, reason: rule[2] };
          context.report({ node: source, messageId: 'package', data });
        }
        return;
      }
      const reason = objection(file, target);
      if (reason) {
        context.report({ node: source, messageId: 'direction', data: { from: folderOf(file), to: target, reason } });
      }
    }
    return {
      ImportDeclaration: (node) => check(node.source),
      ExportNamedDeclaration: (node) => check(node.source),
      ExportAllDeclaration: (node) => check(node.source),
      ImportExpression: (node) => check(node.source),
      TSImportType: (/** @type {any} */ node) => check(node.source ?? node.argument?.literal),
    };
  },
};

/**
 * The path of a file of ours from the root of the repository, without its ending; null for a package.
 * @param {string} file
 * @param {string} specifier
 */
function resolve(file, specifier) {
  if (specifier === '$sim' || specifier === '$lessons') return `${specifier.slice(1)}/index`;
  if (/^\$(sim|lessons)\//.test(specifier)) return specifier.slice(1);
  if (!specifier.startsWith('.')) return null;
  const path = join(dirname(file), specifier.replace(/\?.*$/, '')).split(sep).join('/');
  const bare = path.replace(/\.(ts|js|mjs|svelte)$/, '');
  return bare === 'sim' || bare === 'lessons' ? `${bare}/index` : bare;
}

/**
 * Why a file may not import another, or null where it may.
 * @param {string} file
 * @param {string} target
 * @returns {string | null}
 */
function objection(file, target) {
  const [from] = file.split('/');
  const [to] = target.split('/');
  if (!['sim', 'lessons', 'src'].includes(to)) return 'what the app is made of lies in sim, lessons and src alone';

  if (from === 'sim') {
    if (to !== 'sim') return 'sim stands on its own: lessons and src read it, never the other way round';
    return file === 'sim/index.ts' ? null : simOrderObjection(file, target);
  }
  if (to === 'sim') return target === 'sim/index' ? null : 'sim has one door, sim/index.ts ($sim)';
  if (from === 'lessons') {
    if (to === 'src') return 'lessons run without the page: src reads lessons, never the other way round';
    const outOfCli = !file.startsWith('lessons/cli/') && target.startsWith('lessons/cli/');
    return outOfCli ? 'the command line is an end of the road: nothing builds on it' : null;
  }
  if (to === 'lessons') return target === 'lessons/index' ? null : 'lessons has one door, lessons/index.ts ($lessons)';
  const crossesServe = file.startsWith('src/serve/') !== target.startsWith('src/serve/');
  return crossesServe ? 'the server and the page share no code: one runs in Node, the other in a browser' : null;
}

/**
 * @param {string} file
 * @param {string} target
 * @returns {string | null}
 */
function simOrderObjection(file, target) {
  if (target === 'sim/index') return 'the door is for those outside sim; inside, name the file itself';
  const [, from, ...restFrom] = file.split('/');
  const [, to, ...restTo] = target.split('/');
  const order = SIM_ORDER.join(', ');
  if (restFrom.length === 0) return 'only index.ts lies in sim itself; every other file has a folder';
  if (!SIM_ORDER.includes(from)) return `sim/${from} has no place yet in the folder order (${order})`;
  if (restTo.length === 0 || !SIM_ORDER.includes(to)) return `it is in none of the folders of sim (${order})`;
  if (SIM_ORDER.indexOf(to) <= SIM_ORDER.indexOf(from)) return null;
  return `a folder of sim imports only itself and those before it (${order}); what a later one knows, it passes in`;
}

/** @param {string} file */
function folderOf(file) {
  return dirname(file);
}
