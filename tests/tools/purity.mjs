/** No clock outside `src/cli.ts`, no process outside it and the commands, no `throw` for what a keeper wrote. */
import ts from 'typescript';
import { layerOf } from './layers.mjs';
import { walk } from './sources.mjs';

const CLOCKS = new Set(['Date.now', 'DateTime.now', 'DateTime.local', 'DateTime.utc', 'performance.now']);
const NEVER_THROW = new Set(['journal', 'room', 'rules', 'report', 'statistics', 'findings', 'species']);

/**
 * @param {import('./sources.mjs').SourceFile[]} sources
 * @returns {import('./sources.mjs').Complaint[]}
 */
export function impurities(sources) {
  /** @type {import('./sources.mjs').Complaint[]} */
  const complaints = [];
  for (const source of sources) {
    const { path } = source;
    walk(source, (node, line) => {
      const what = impurity(node, layerOf(path));
      if (what !== undefined) complaints.push({ path, line, what });
    });
  }
  return complaints;
}

/**
 * @param {ts.Node} node
 * @param {string} layer
 */
function impurity(node, layer) {
  if (layer !== 'cli') {
    if (ts.isPropertyAccessExpression(node) && CLOCKS.has(node.getText()))
      return 'the clock is read in src/cli.ts only';
    if (ts.isNewExpression(node) && node.expression.getText() === 'Date')
      return 'days are integers, see src/days.ts';
  }
  if (layer !== 'cli' && layer !== 'commands' && ts.isIdentifier(node) && node.text === 'process') {
    if (!isMemberName(node)) return 'the process is for cli and commands';
  }
  if (NEVER_THROW.has(layer) && ts.isThrowStatement(node))
    return 'what a keeper wrote is a finding, never a throw';
  return undefined;
}

/**
 * Whether the word is a member's name, as in `wash.process` or `{ process: 1 }`.
 * @param {ts.Identifier} node
 */
function isMemberName(node) {
  const { parent } = node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  const named =
    ts.isPropertyAccessExpression(parent) || ts.isPropertyAssignment(parent) || ts.isTypeElement(parent);
  return (named || ts.isClassElement(parent)) && parent.name === node;
}
