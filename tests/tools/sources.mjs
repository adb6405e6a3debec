/** The source files as the checks see them. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { root } from '../../bin/build/settings.mjs';

/**
 * @typedef {{ path: string, text: string }} SourceFile the path relative to the project, with forward slashes
 * @typedef {{ path: string, line: number, what: string }} Complaint
 */

/**
 * All files below a folder of the project whose name ends in one of these, sorted by path.
 * @param {string} folder
 * @param {string[]} endings
 * @returns {SourceFile[]}
 */
export function filesBelow(folder, endings) {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => endings.some((ending) => name.endsWith(ending)))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .sort()
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

/**
 * Calls back for each node of the file's syntax tree, with the line that it starts on.
 * @param {SourceFile} source
 * @param {(node: ts.Node, line: number) => void} visit
 */
export function walk({ path, text }, visit) {
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  /** @param {ts.Node} node */
  const down = (node) => {
    visit(node, tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1);
    ts.forEachChild(node, down);
  };
  ts.forEachChild(tree, down);
}
