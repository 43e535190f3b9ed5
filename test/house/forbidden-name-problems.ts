import ts from 'typescript';
import { treeOf, type SourceFile } from './source-file.ts';

/** What would make the core's answer depend on when, where or on which device it is asked. */
const FORBIDDEN_FREE = new Set([
  'console', 'process', 'window', 'document', 'navigator', 'location', 'localStorage', 'sessionStorage', 'indexedDB',
  'fetch', 'XMLHttpRequest', 'WebSocket', 'Worker', 'self', 'globalThis', 'global', 'require', 'module', 'Buffer', '__dirname', '__filename',
  'setTimeout', 'setInterval', 'setImmediate', 'clearTimeout', 'queueMicrotask', 'requestAnimationFrame',
  'performance', 'crypto', 'Intl', 'eval', 'Function',
]);
const FORBIDDEN_MEMBERS = new Set(['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString', 'toLocaleUpperCase', 'toLocaleLowerCase', 'localeCompare']);
/** Of Date only this is a plain function of what it is given. */
const ALLOWED_OF_DATE = new Set(['UTC', 'parse']);

/** Every use of a forbidden name, one sentence each. Comments and texts do not count. */
export function forbiddenNameProblems(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => {
    const tree = treeOf(file);
    const declared = declaredNames(tree);
    const problems: string[] = [];
    const complain = (node: ts.Node, name: string) =>
      problems.push(`${file.path}:${tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1}: ${name} has no place in the core`);
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAccessExpression(node) && FORBIDDEN_MEMBERS.has(node.name.text)) complain(node.name, node.name.text);
      if (ts.isPropertyAccessExpression(node) && node.expression.getText(tree) === 'Math' && node.name.text === 'random') complain(node, 'Math.random');
      if (ts.isMetaProperty(node) && node.keywordToken === ts.SyntaxKind.ImportKeyword) complain(node, 'import.meta');
      if (ts.isIdentifier(node) && isFreeUse(node) && !declared.has(node.text)) {
        if (FORBIDDEN_FREE.has(node.text)) complain(node, node.text);
        if (node.text === 'Date' && !isAllowedOfDate(node)) complain(node, 'Date');
      }
      ts.forEachChild(node, visit);
    };
    visit(tree);
    return problems;
  });
}

function isAllowedOfDate(node: ts.Identifier): boolean {
  return ts.isPropertyAccessExpression(node.parent) && node.parent.expression === node && ALLOWED_OF_DATE.has(node.parent.name.text);
}

/** True for a name that stands by itself, not after a dot, as a key, or as the name of what is being made. */
function isFreeUse(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isQualifiedName(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent) || ts.isMethodDeclaration(parent) || ts.isMethodSignature(parent)) return false;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  return !(ts.isTypeReferenceNode(parent) || ts.isImportSpecifier(parent) || ts.isExportSpecifier(parent) || ts.isNamedTupleMember(parent) || ts.isEnumMember(parent));
}

/** Names that the file gives to things of its own: a `window` over a spectrum is not the browser's. */
function declaredNames(tree: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (
      (ts.isVariableDeclaration(node) || ts.isParameter(node) || ts.isFunctionDeclaration(node) || ts.isBindingElement(node) || ts.isImportSpecifier(node) || ts.isImportClause(node) || ts.isClassDeclaration(node)) &&
      node.name &&
      ts.isIdentifier(node.name)
    )
      names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return names;
}
