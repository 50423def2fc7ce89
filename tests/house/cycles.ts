// Finds rings of files that import each other: they load in an order that nobody chose.
import { readFileSync } from 'node:fs';
import { dirname, relative, resolve, sep } from 'node:path';
import ts from 'typescript';
import { ROOT, sourcesBelow } from './program';

/** What each file imports of ours when it runs; an import of types alone leaves nothing to load. */
export function importsOf(root: string = ROOT, folders = ['sim', 'lessons', 'src']): Map<string, string[]> {
  const files = folders.flatMap((folder) => sourcesBelow(resolve(root, folder), /(?<!\.d)\.(ts|mjs|svelte)$/));
  const known = new Set(files);
  const nameOf = (file: string): string => relative(root, file).split(sep).join('/');
  return new Map(
    files.map((file) => {
      const targets = specifiersIn(file).map((specifier) => locate(root, file, specifier, known));
      return [nameOf(file), targets.filter((target) => target !== undefined).map(nameOf)];
    }),
  );
}

/** One ring for each import that closes one, written 'a -> b -> a'. */
export function ringsIn(imports: Map<string, string[]>): string[] {
  const rings: string[] = [];
  const done = new Set<string>();
  const walk = (file: string, trail: string[]): void => {
    const seenAt = trail.indexOf(file);
    if (seenAt >= 0) {
      rings.push([...trail.slice(seenAt), file].join(' -> '));
      return;
    }
    if (done.has(file)) return;
    for (const next of imports.get(file) ?? []) walk(next, [...trail, file]);
    done.add(file);
  };
  for (const file of imports.keys()) walk(file, []);
  return rings;
}

function specifiersIn(path: string): string[] {
  const text = readFileSync(path, 'utf8');
  const scripts = path.endsWith('.svelte')
    ? [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]).join('\n')
    : text;
  return ts.createSourceFile(path, scripts, ts.ScriptTarget.ES2023).statements.flatMap((statement) => {
    const loads =
      (ts.isImportDeclaration(statement) && statement.importClause?.phaseModifier !== ts.SyntaxKind.TypeKeyword) ||
      (ts.isExportDeclaration(statement) && !statement.isTypeOnly);
    if (!loads || !statement.moduleSpecifier || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    return [statement.moduleSpecifier.text];
  });
}

function locate(root: string, from: string, specifier: string, known: Set<string>): string | undefined {
  const path = /^\$(sim|lessons)$/.test(specifier)
    ? resolve(root, specifier.slice(1), 'index')
    : specifier.startsWith('.')
      ? resolve(dirname(from), specifier)
      : undefined;
  if (path === undefined) return undefined;
  return [path, `${path}.ts`, `${path}.svelte`, resolve(path, 'index.ts')].find((candidate) => known.has(candidate));
}
