/** No regular expression in the sources that a long line could keep busy: each takes a time linear in the text. */
import { checkSync } from 'recheck';
import ts from 'typescript';
import { walk } from './sources.mjs';

/** For one expression, in milliseconds; what is not judged by then is a complaint as well. */
const TIMEOUT = 10_000;

/**
 * @param {import('./sources.mjs').SourceFile[]} sources
 * @returns {import('./sources.mjs').Complaint[]}
 */
export function slowExpressions(sources) {
  /** @type {import('./sources.mjs').Complaint[]} */
  const complaints = [];
  for (const source of sources) {
    walk(source, (node, line) => {
      if (!ts.isRegularExpressionLiteral(node)) return;
      const what = slowness(node.text);
      if (what !== undefined) complaints.push({ path: source.path, line, what });
    });
  }
  return complaints;
}

/** @param {string} literal */
function slowness(literal) {
  const end = literal.lastIndexOf('/');
  const result = checkSync(literal.slice(1, end), literal.slice(end + 1), { timeout: TIMEOUT });
  if (result.status === 'safe') return undefined;
  if (result.status === 'unknown') return `${literal} could not be judged: ${result.error.kind}`;
  return `${literal} takes ${result.complexity.summary} time on ${result.attack.pattern}`;
}
