// Finds where the model behaves by a soil's name. A soil is its parameters: a driller's new soil must need no new code.
import ts from 'typescript';
import { namedBy, pathOf, ROOT } from './program';

/** The types that name soils: the model's own, and the words that a learner may give. */
const NAME_TYPES = ['SoilKind', 'KindWord'];
const LOOKUPS = new Set(['includes', 'indexOf', 'has', 'get']);
const TEXT_METHODS = new Set(['startsWith', 'endsWith', 'includes', 'indexOf', 'match', 'search', 'slice', 'charAt']);

/** Each place as 'path:line: text'. Throws where the program has no type of soil names, for then it cannot judge. */
export function branchesOnKind(program: ts.Program, root: string = ROOT): string[] {
  const checker = program.getTypeChecker();
  const names = soilNames(program, checker, root);
  const places: string[] = [];
  for (const file of program.getSourceFiles()) {
    const path = pathOf(file, root);
    if (!path.startsWith('sim/') || path.startsWith('sim/materials/')) continue;
    const visit = (node: ts.Node): void => {
      if (isBranch(node, { checker, names, path, root })) {
        const line = file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
        places.push(`${path}:${line}: ${node.getText().split('\n')[0]}`);
      }
      ts.forEachChild(node, visit);
    };
    visit(file);
  }
  return places;
}

interface Judge {
  readonly checker: ts.TypeChecker;
  readonly names: ReadonlySet<string>;
  readonly path: string;
  readonly root: string;
}

function isBranch(node: ts.Node, judge: Judge): boolean {
  if (ts.isBinaryExpression(node) && isEquality(node.operatorToken.kind)) {
    return comparesName(node.left, node.right, judge) || comparesName(node.right, node.left, judge);
  }
  if (ts.isCaseClause(node)) return comparesName(node.expression, node.parent.parent.expression, judge);
  if (ts.isElementAccessExpression(node)) {
    return isSoilName(node.argumentExpression, judge) && !isTableOfSoils(node.expression, judge);
  }
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
    const { expression: receiver, name } = node.expression;
    if (TEXT_METHODS.has(name.text) && isSoilName(receiver, judge)) return true;
    const [argument] = node.arguments;
    return LOOKUPS.has(name.text) && argument && isSoilName(argument, judge) ? !isTableOfSoils(receiver, judge) : false;
  }
  return false;
}

/** A fixed name against something that may be a soil's name; ids of other things that share a word are left alone. */
function comparesName(fixed: ts.Expression, other: ts.Expression, { checker, names }: Judge): boolean {
  const literal = literalsOf(checker.getTypeAtLocation(fixed));
  if (literal?.length !== 1 || !names.has(literal[0])) return false;
  const others = literalsOf(checker.getTypeAtLocation(other));
  return others === null || others.every((value) => names.has(value));
}

function isSoilName(expression: ts.Expression, { checker, names }: Judge): boolean {
  const literals = literalsOf(checker.getTypeAtLocation(expression));
  return literals !== null && literals.length > 1 && literals.every((value) => names.has(value));
}

/** The soils' own parameters lie in sim/materials, and the generator's odds of one soil on another in sim/ground. */
function isTableOfSoils(table: ts.Expression, { checker, path, root }: Judge): boolean {
  let inner: ts.Expression = table;
  while (ts.isElementAccessExpression(inner) || ts.isNonNullExpression(inner)) inner = inner.expression;
  const identifier = ts.isPropertyAccessExpression(inner) ? inner.name : inner;
  const symbol = ts.isIdentifier(identifier) ? namedBy(checker, identifier) : undefined;
  const home = symbol?.declarations?.[0]?.getSourceFile();
  if (!home) return false;
  const homePath = pathOf(home, root);
  return (
    homePath.startsWith('sim/materials/') || (path.startsWith('sim/ground/') && homePath.startsWith('sim/ground/'))
  );
}

/** The strings that a type admits, or null where it admits any string, or anything else. */
function literalsOf(type: ts.Type): string[] | null {
  const parts = (type.isUnion() ? type.types : [type]).filter(
    (part) => !(part.flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined)),
  );
  const values = parts.map((part) => (part.isStringLiteral() ? part.value : null));
  return values.length > 0 && values.every((value) => value !== null) ? values : null;
}

function isEquality(kind: ts.SyntaxKind): boolean {
  return (
    kind === ts.SyntaxKind.EqualsEqualsEqualsToken ||
    kind === ts.SyntaxKind.ExclamationEqualsEqualsToken ||
    kind === ts.SyntaxKind.EqualsEqualsToken ||
    kind === ts.SyntaxKind.ExclamationEqualsToken
  );
}

function soilNames(program: ts.Program, checker: ts.TypeChecker, root: string): ReadonlySet<string> {
  const names = new Set<string>();
  const found = new Set<string>();
  for (const file of program.getSourceFiles()) {
    if (!pathOf(file, root).startsWith('sim/')) continue;
    for (const statement of file.statements) {
      if (!ts.isTypeAliasDeclaration(statement) || !NAME_TYPES.includes(statement.name.text)) continue;
      found.add(statement.name.text);
      for (const value of literalsOf(checker.getTypeAtLocation(statement)) ?? []) names.add(value);
    }
  }
  const missing = NAME_TYPES.filter((name) => !found.has(name));
  if (missing.length > 0 || names.size < 10)
    throw new Error(`sim names no soils: no usable type ${missing.join(', ')}`);
  return names;
}
