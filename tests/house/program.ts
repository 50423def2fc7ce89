// One compiled view of a tree of sources, for the tests that ask what calls and imports what.
import { readdirSync } from 'node:fs';
import { relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Every TypeScript source of sim and lessons below a root, compiled with the root's own path names. */
export function programOf(root: string = ROOT): ts.Program {
  const files = ['sim', 'lessons'].flatMap((folder) => sourcesBelow(resolve(root, folder)));
  return ts.createProgram(files, {
    target: ts.ScriptTarget.ES2023,
    lib: ['lib.es2023.d.ts'],
    types: [],
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    skipLibCheck: true,
    noEmit: true,
    paths: { $sim: [resolve(root, 'sim/index.ts')], $lessons: [resolve(root, 'lessons/index.ts')] },
  });
}

/** The path of a source from the root, with forward slashes. */
export function pathOf(file: ts.SourceFile, root: string = ROOT): string {
  return relative(root, file.fileName).split(sep).join('/');
}

export function sourcesBelow(folder: string, endings: RegExp = /(?<!\.d)\.ts$/): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && endings.test(entry.name))
    .map((entry) => resolve(entry.parentPath, entry.name))
    .sort();
}

/** What an identifier finally names, through every import and re-export. */
export function namedBy(checker: ts.TypeChecker, identifier: ts.Identifier): ts.Symbol | undefined {
  const { parent } = identifier;
  const symbol =
    ts.isShorthandPropertyAssignment(parent) && parent.name === identifier
      ? checker.getShorthandAssignmentValueSymbol(parent)
      : checker.getSymbolAtLocation(identifier);
  return symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}
