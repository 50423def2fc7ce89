// The constants at the top of the sources of sim: what they come to, and whether their remarks call them ASSUMED.
import { readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { ROOT, sourcesBelow } from './program';

export const SIM = join(ROOT, 'sim');

export interface Constant {
  /** Undefined where it is neither exported nor made of plain numbers. */
  readonly value: unknown;
  /** The remark over it, or the head of its file, says ASSUMED. */
  readonly assumed: boolean;
}

type Known = ReadonlyMap<string, unknown>;

const calculated: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
};

/** Value of an expression of numbers, lists and records; undefined for anything else. */
function valueOf(node: ts.Node, known: Known): unknown {
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isIdentifier(node)) return known.get(node.text);
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return valueOf(node.expression, known);
  if (ts.isPrefixUnaryExpression(node)) return -(valueOf(node.operand, known) as number);
  if (ts.isArrayLiteralExpression(node)) return node.elements.map((element) => valueOf(element, known));
  if (ts.isObjectLiteralExpression(node)) {
    const fields = node.properties.filter((property) => ts.isPropertyAssignment(property));
    return Object.fromEntries(fields.map(({ name, initializer }) => [name.getText(), valueOf(initializer, known)]));
  }
  if (ts.isCallExpression(node) && /^(Math\.)?sqrt$/.test(node.expression.getText()))
    return Math.sqrt(valueOf(node.arguments[0], known) as number);
  if (!ts.isBinaryExpression(node)) return undefined;
  const [a, b] = [node.left, node.right].map((side) => valueOf(side, known) as number);
  return calculated[node.operatorToken.getText()]?.(a, b);
}

/** The numbers that a text such as `2.5 + 0.5, sqrt(2 / 3)` comes to; undefined where a part is no number. */
export function numbersIn(text: string): (number | undefined)[] {
  const [statement] = ts.createSourceFile('text.ts', `[${text}]`, ts.ScriptTarget.ES2023, true).statements;
  if (!statement || !ts.isExpressionStatement(statement)) return [];
  const list = valueOf(statement.expression, new Map());
  return Array.isArray(list) ? list.map((part) => (Number.isFinite(part) ? (part as number) : undefined)) : [];
}

const files = sourcesBelow(SIM).map((path) => relative(SIM, path).split(sep).join('/'));
const modules = new Map<string, Record<string, unknown>>();
for (const file of files)
  modules.set(file, (await import(pathToFileURL(join(SIM, file)).href)) as Record<string, unknown>);

function constantsOf(file: string): Map<string, Constant> {
  const text = readFileSync(join(SIM, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true);
  const head = /^(?:\/\/.*\r?\n)*/.exec(text)![0];
  const found = new Map<string, Constant>();
  const known = new Map<string, unknown>();
  let remark = '';
  for (const statement of source.statements) {
    const before = text.slice(statement.getFullStart(), statement.getStart());
    // A remark speaks for the lines right under it, up to the next blank line.
    if (before.trim() !== '' || /\n[ \t\r]*\n/.test(before)) remark = before;
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, initializer } of statement.declarationList.declarations) {
      if (!initializer || !/^[A-Z]/.test(name.getText())) continue;
      const value = modules.get(file)?.[name.getText()] ?? valueOf(initializer, known);
      known.set(name.getText(), value);
      found.set(name.getText(), { value, assumed: /ASSUMED/.test(head + remark) });
    }
  }
  return found;
}

/** By file below sim, then by name: every constant in capitals. */
export const CONSTANTS: ReadonlyMap<string, ReadonlyMap<string, Constant>> = new Map(
  files.map((file) => [file, constantsOf(file)]),
);
