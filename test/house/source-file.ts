import { readFileSync, readdirSync } from 'node:fs';
import { join, posix } from 'node:path';
import ts from 'typescript';

export const HOME = join(import.meta.dirname, '..', '..');

/** A file of the project as the house tests see it; a bad sample is one that never was on the disk. */
export interface SourceFile {
  /** From the project's folder on, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** Files below the folders, in a fixed order, whose names end in one of the endings. */
export function sourceFiles(folders: readonly string[], endings: readonly string[]): SourceFile[] {
  return folders.flatMap((folder) =>
    readdirSync(join(HOME, folder), { recursive: true, withFileTypes: true })
      .filter((item) => item.isFile() && endings.some((ending) => item.name.endsWith(ending)))
      .map((item) => posix.join(item.parentPath.slice(HOME.length + 1).replaceAll('\\', '/'), item.name))
      .toSorted()
      .map((path) => ({ path, text: readFileSync(join(HOME, path), 'utf8') })),
  );
}

/** The TypeScript in a file: all of it, or what stands in the script elements of a page part. */
export function scriptOf({ path, text }: SourceFile): string {
  if (!path.endsWith('.svelte')) return text;
  return [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]).join('\n');
}

/** The file as a tree. */
export function treeOf(file: SourceFile): ts.SourceFile {
  return ts.createSourceFile(file.path, scriptOf(file), ts.ScriptTarget.ES2023, true, ts.ScriptKind.TS);
}

/** Everything that a file imports, types and late imports included, as it is written. */
export function importsOf(file: SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
      found.push(node.moduleSpecifier.text);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword && node.arguments[0] && ts.isStringLiteralLike(node.arguments[0]))
      found.push(node.arguments[0].text);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal))
      found.push(node.argument.literal.text);
    ts.forEachChild(node, visit);
  };
  visit(treeOf(file));
  return found;
}

/** Path of what an import with a leading dot means; undefined for a package. */
export function targetOf(file: SourceFile, specifier: string): string | undefined {
  return specifier.startsWith('.') ? posix.join(posix.dirname(file.path), specifier.replace(/\?.*$/, '')) : undefined;
}
