/** Every import of a source file, resolved to the file it means. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import ts from 'typescript';

export interface Import {
  /** Path from the project folder. */
  readonly from: string;
  readonly line: number;
  /** As written. */
  readonly written: string;
  /** The file it means, or undefined for a package. */
  readonly to: string | undefined;
  /** import() at run time, import type, the plain kind, or a path in a string, which loads or reads a file unseen. */
  readonly how: 'plain' | 'type' | 'later' | 'path';
}

export function sourceFiles(project: string, folder: string): string[] {
  return readdirSync(join(project, folder), { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && /\.(?:ts|tsx|astro|mjs)$/.test(e.name))
    .map((e) => slashes(relative(project, join(e.parentPath, e.name))))
    .sort();
}

export function importsOf(project: string, file: string): Import[] {
  const text = readFileSync(join(project, file), 'utf8');
  return pieces(file, text).flatMap(({ code, firstLine }) => readImports(project, file, code, firstLine));
}

/** An .astro file has code in its front matter and in its scripts. */
function pieces(file: string, text: string): { code: string; firstLine: number }[] {
  if (!file.endsWith('.astro')) return [{ code: text, firstLine: 1 }];
  const found = [...text.matchAll(/^---\r?\n([\s\S]*?)^---/gm)]
    .slice(0, 1)
    .concat([...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)]);
  return found.map((m) => ({
    code: m[1] ?? '',
    firstLine: text.slice(0, m.index + m[0].indexOf(m[1] ?? '')).split('\n').length,
  }));
}

function readImports(project: string, file: string, code: string, firstLine: number): Import[] {
  const tree = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: Import[] = [];
  const add = (node: ts.Node, written: string, how: Import['how']) =>
    found.push({
      from: file,
      line: tree.getLineAndCharacterOfPosition(node.getStart()).line + firstLine,
      written,
      to: resolveImport(project, file, written),
      how,
    });
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier))
      add(
        node,
        node.moduleSpecifier.text,
        node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword ? 'type' : 'plain',
      );
    else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
      add(node, node.moduleSpecifier.text, node.isTypeOnly ? 'type' : 'plain');
    else if (
      ts.isImportTypeNode(node) &&
      ts.isLiteralTypeNode(node.argument) &&
      ts.isStringLiteral(node.argument.literal)
    )
      add(node, node.argument.literal.text, 'type');
    else if (ts.isCallExpression(node)) for (const written of loadedBy(node)) add(node, written, 'later');
    if (ts.isStringLiteralLike(node) && !isImported(node) && namesFile(project, file, node.text))
      add(node, node.text, 'path');
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** Told as an import already. */
function isImported(literal: ts.StringLiteralLike): boolean {
  const { parent } = literal;
  if (ts.isCallExpression(parent)) return loadedBy(parent).includes(literal.text);
  if (ts.isArrayLiteralExpression(parent) && ts.isCallExpression(parent.parent))
    return loadedBy(parent.parent).includes(literal.text);
  return ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent) || ts.isLiteralTypeNode(parent);
}

/** A whole string that is the path of a file or folder of the project: from the file it stands in, or from the top. */
function namesFile(project: string, file: string, text: string): boolean {
  if (!/^(?:\.{1,2}\/|src\/)(?=.*\w)[\w./[\]-]*$/.test(text)) return false;
  const from = text.startsWith('src/') ? project : join(project, dirname(file));
  return existsSync(join(from, text));
}

/** import('...'), require('...') and import.meta.glob('...'). */
function loadedBy(call: ts.CallExpression): string[] {
  const name = call.expression.getText();
  if (call.expression.kind !== ts.SyntaxKind.ImportKeyword && name !== 'require' && name !== 'import.meta.glob')
    return [];
  const first = call.arguments[0];
  const literals = first && ts.isArrayLiteralExpression(first) ? [...first.elements] : first ? [first] : [];
  // A pattern that leaves something out brings nothing in.
  return literals.flatMap((l) => (ts.isStringLiteralLike(l) && !l.text.startsWith('!') ? [l.text] : []));
}

/** A path is followed wherever it leads, so "../../" gets past no wall. */
function resolveImport(project: string, file: string, written: string): string | undefined {
  if (!/^(?:[./]|src\/)/.test(written)) return undefined;
  const clean = written.replace(/\?.*$/, '');
  const from = /^(?:\/|src\/)/.test(clean) ? join(project, clean) : resolve(project, dirname(file), clean);
  const tries = [from, `${from}.ts`, `${from}.tsx`, join(from, 'index.ts')];
  return slashes(relative(project, tries.find((t) => existsSync(t) && /\.\w+$/.test(t)) ?? from));
}

function slashes(path: string): string {
  return path.split(sep).join('/');
}
