// Follows calls from the doors of the model, to find physics that is tested but that no run ever uses.
import ts from 'typescript';
import { namedBy, pathOf, ROOT } from './program';

/** Folders whose every exported function must be used by the run or by the verdict. */
const PHYSICS = /^sim\/(numeric|materials|ground|fluid|hydraulics|hole|pit|drilling|completion|well|machine)\//;

interface Declared {
  readonly path: string;
  readonly name: string;
  readonly exportedFunction: boolean;
  readonly uses: Set<ts.Symbol>;
}

export interface Reach {
  /** How many exported functions of the physics were looked at. */
  readonly looked: number;
  /** Those that nothing reaches, as 'path: name'. */
  readonly unreached: string[];
}

/**
 * Follows uses from three doors: the step, whatever else of sim/run the model offers (actions, senses, ledger ...),
 * and the lessons, which hold the verdict and the command line. Being offered by sim/index.ts opens no door to a
 * formula: it could be offered for the sake of a test alone.
 */
export function reachOf(program: ts.Program, root: string = ROOT): Reach {
  const checker = program.getTypeChecker();
  const declared = declarations(program, checker, root);
  const reached = new Set<ts.Symbol>();
  const waiting = doorsOf(program, checker, root, declared);
  for (let symbol = waiting.pop(); symbol; symbol = waiting.pop()) {
    if (reached.has(symbol)) continue;
    reached.add(symbol);
    waiting.push(...(declared.get(symbol)?.uses ?? []));
  }
  const functions = [...declared].filter(([, entry]) => entry.exportedFunction && PHYSICS.test(entry.path));
  const unreached = functions.filter(([symbol]) => !reached.has(symbol));
  return { looked: functions.length, unreached: unreached.map(([, { path, name }]) => `${path}: ${name}`).sort() };
}

function doorsOf(
  program: ts.Program,
  checker: ts.TypeChecker,
  root: string,
  declared: Map<ts.Symbol, Declared>,
): ts.Symbol[] {
  const exportsOf = (path: string): ts.Symbol[] => {
    const file = program.getSourceFiles().find((source) => pathOf(source, root) === path);
    return file ? exportedBy(checker, file) : [];
  };
  const step = exportsOf('sim/run/step.ts').filter(({ name }) => name === 'step');
  if (step.length === 0) throw new Error('sim/run/step.ts does not export step, the first door of the model');
  const offered = exportsOf('sim/index.ts').filter((symbol) => declared.get(symbol)?.path.startsWith('sim/run/'));
  const commands = [...declared].filter(([, { path }]) => path.startsWith('lessons/cli/')).map(([symbol]) => symbol);
  return [...step, ...offered, ...exportsOf('lessons/index.ts'), ...commands];
}

/** What a file exports, each followed to where it is declared. */
function exportedBy(checker: ts.TypeChecker, file: ts.SourceFile): ts.Symbol[] {
  const module = checker.getSymbolAtLocation(file);
  const symbols = module ? checker.getExportsOfModule(module) : [];
  return symbols.map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol));
}

/** Everything declared at the top of a file, with all that its text names. */
function declarations(program: ts.Program, checker: ts.TypeChecker, root: string): Map<ts.Symbol, Declared> {
  const found = new Map<ts.Symbol, Declared>();
  for (const file of program.getSourceFiles()) {
    const path = pathOf(file, root);
    if (!/^(sim|lessons)\//.test(path)) continue;
    const exported = new Set(exportedBy(checker, file));
    const add = (name: ts.Identifier, body: ts.Node, isFunction: boolean): void => {
      const symbol = checker.getSymbolAtLocation(name)!;
      const exportedFunction = isFunction && exported.has(symbol);
      found.set(symbol, { path, name: name.text, exportedFunction, uses: namesIn(checker, body) });
    };
    for (const statement of file.statements) {
      if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) {
        if (statement.name) add(statement.name, statement, ts.isFunctionDeclaration(statement));
      } else if (ts.isVariableStatement(statement)) {
        for (const { name, initializer } of statement.declarationList.declarations) {
          if (!initializer) continue;
          const isFunction = ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer);
          for (const bound of namesBound(name)) add(bound, initializer, isFunction);
        }
      }
    }
  }
  return found;
}

/** The one name of a plain declaration, or each of those that take a value apart. */
function namesBound(name: ts.BindingName): ts.Identifier[] {
  if (ts.isIdentifier(name)) return [name];
  return name.elements.flatMap((element) => (ts.isOmittedExpression(element) ? [] : namesBound(element.name)));
}

/** Names in types do not count: to speak of what a function returns is not to call it. */
function namesIn(checker: ts.TypeChecker, body: ts.Node): Set<ts.Symbol> {
  const names = new Set<ts.Symbol>();
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isIdentifier(node)) {
      const symbol = namedBy(checker, node);
      if (symbol) names.add(symbol);
    }
    ts.forEachChild(node, visit);
  };
  ts.forEachChild(body, visit);
  return names;
}
