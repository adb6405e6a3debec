/** Who may import whom. The table is the map of `src`: a new folder needs its line here. */
import { posix } from 'node:path';
import ts from 'typescript';
import { walk } from './sources.mjs';

/**
 * @typedef {import('./sources.mjs').SourceFile} SourceFile
 * @typedef {import('./sources.mjs').Complaint} Complaint
 * @typedef {{ values: string[], types?: string[], node?: RegExp | true }} Layer
 *   `values`: layers that it may import from; `types`: layers of which it may know types only;
 *   `node`: its files that may use Node's own modules (`true`: all)
 */

const pure = ['days', 'words', 'grouped', 'file-names', 'statistics', 'findings'];

/** @type {Record<string, Layer>} from the top down */
export const layers = {
  cli: { values: ['commands', 'days'], node: true },
  commands: {
    values: ['report', 'write', 'rules', 'room', 'journal', 'species', ...pure],
    node: true,
  },
  report: { values: ['room', 'journal', 'species', ...pure], types: ['rules'] },
  write: { values: ['room', 'journal', 'species', ...pure], types: ['rules'], node: true },
  rules: { values: ['room', 'journal', 'species', ...pure] },
  room: { values: ['journal', 'species', ...pure] },
  journal: { values: ['species', ...pure], node: /^src\/journal\/(load|folders|cache)/ },
  species: { values: pure },
  findings: { values: ['statistics', 'days', 'words', 'grouped', 'file-names'] },
  statistics: { values: ['days', 'grouped'] },
  days: { values: [] },
  words: { values: [] },
  grouped: { values: [] },
  'file-names': { values: [] },
};

/**
 * The layer of a source file: its folder in `src`, or its own name there.
 * @param {string} path
 */
export function layerOf(path) {
  return (path.split('/')[1] ?? '').replace(/\.tsx?$/, '');
}

/**
 * Imports that go upwards or sideways.
 * @param {SourceFile[]} sources
 * @returns {Complaint[]}
 */
export function wrongImports(sources) {
  /** @type {Complaint[]} */
  const complaints = [];
  for (const source of sources) {
    const own = layerOf(source.path);
    const layer = layers[own];
    if (layer === undefined) {
      complaints.push({ path: source.path, line: 1, what: `${own} is no layer of tests/tools/layers.mjs` });
      continue;
    }
    walk(source, (node, line) => {
      const imported = importOf(node);
      if (imported === undefined) return;
      const problem = judge(source.path, own, layer, imported);
      if (problem !== undefined) complaints.push({ path: source.path, line, what: problem });
    });
  }
  return complaints;
}

/**
 * @param {string} path
 * @param {string} own
 * @param {Layer} layer
 * @param {{ from: string, typeOnly: boolean }} imported
 */
function judge(path, own, layer, { from, typeOnly }) {
  if (from.startsWith('node:')) {
    const allowed = layer.node === true || layer.node?.test(path);
    return allowed ? undefined : `${from}: files and processes are for cli, commands, write and journal/load`;
  }
  if (!from.startsWith('.')) return undefined;
  const target = layerOf(posix.join(posix.dirname(path), from));
  if (target === own || layer.values.includes(target)) return undefined;
  if (layer.types?.includes(target)) {
    return typeOnly ? undefined : `${own} may know the types of ${target} only (import type)`;
  }
  return `${own} may not import from ${target}`;
}

/**
 * @param {ts.Node} node
 * @returns {{ from: string, typeOnly: boolean } | undefined}
 */
function importOf(node) {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
    const { moduleSpecifier } = node;
    if (moduleSpecifier === undefined || !ts.isStringLiteral(moduleSpecifier)) return undefined;
    return { from: moduleSpecifier.text, typeOnly: isTypeOnly(node) };
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [name] = node.arguments;
    return name !== undefined && ts.isStringLiteral(name) ? { from: name.text, typeOnly: false } : undefined;
  }
  return undefined;
}

/** @param {ts.ImportDeclaration | ts.ExportDeclaration} node */
function isTypeOnly(node) {
  if (ts.isExportDeclaration(node)) {
    const names = node.exportClause;
    if (node.isTypeOnly || names === undefined || !ts.isNamedExports(names)) return node.isTypeOnly;
    return names.elements.every((name) => name.isTypeOnly);
  }
  const clause = node.importClause;
  if (clause === undefined) return false;
  if (clause.isTypeOnly) return true;
  const names = clause.namedBindings;
  if (clause.name !== undefined || names === undefined || !ts.isNamedImports(names)) return false;
  return names.elements.length > 0 && names.elements.every((name) => name.isTypeOnly);
}
