import type * as z from 'zod';
import type { Finding } from '../../findings/finding.ts';
import type { GrammarIssue } from '../grammar/issue.ts';
import type { KeyDefinition } from '../grammar/key.ts';
import { Fields, holdsRefused, List, NOWHERE, type Node, Text } from '../nodes.ts';
import { pairText } from '../print.ts';
import { inBraces } from './in-braces.ts';

type Issue = z.core.$ZodIssue;

/**
 * Reads what stands behind a key. A value that is not what the key takes gives undefined and one finding: what the
 * grammar says of it, else what the key takes, at the innermost place that is wrong.
 */
export function readValue<S extends z.ZodType>(
  definition: KeyDefinition<S>,
  key: Text,
  node: Node,
  findings: Finding[],
): z.output<S> | undefined {
  const result = definition.value.safeParse(node);
  if (result.success) return result.data;
  // What was refused has its finding already.
  if (!holdsRefused(node)) findings.push(findingOf(result.error.issues, definition, key, node));
  return undefined;
}

function findingOf(issues: readonly Issue[], definition: KeyDefinition, key: Text, node: Node): Finding {
  const { takes, example } = definition;
  const leaves = issues.flatMap((issue) => leavesOf(issue, []));
  for (const { issue } of leaves) {
    const said = grammarIssue(issue);
    if (said !== null)
      return { code: said.code, at: said.at, args: { ...said.args, name: key.text, example } };
  }
  const deepest = leaves.reduce<readonly PropertyKey[]>(
    (path, leaf) => (leaf.path.length > path.length ? leaf.path : path),
    [],
  );
  const meant = [...inBraces(node), ...withoutBraces(node, definition)].find(
    (one) => definition.value.safeParse(one).success,
  );
  const args = { key: key.text, takes, example: meant === undefined ? example : pairText(key, meant) };
  return { code: 'wrong-value', at: nodeAt(node, deepest).at, args };
}

/** A word of its own in needless braces: `gone: {sold: yes}`. */
function withoutBraces(node: Node, definition: KeyDefinition): Text[] {
  const [pair, ...others] = node instanceof Fields ? node.pairs : [];
  return pair !== undefined && others.length === 0 && isItsValue(pair[0].text, definition) ? [pair[0]] : [];
}

/** Whether a key takes a few words, of which this is one: `sold` of `gone: sold`. */
export function isItsValue(said: string, { value }: KeyDefinition): boolean {
  const takes = (word: string) => value.safeParse(new Text(word, NOWHERE)).success;
  return takes(said) && !takes(`${said} ${said}`);
}

interface Leaf {
  issue: Issue;
  path: readonly PropertyKey[];
}

/** The issues inside of unions, with their whole paths. */
function leavesOf(issue: Issue, above: readonly PropertyKey[]): Leaf[] {
  const path = [...above, ...issue.path];
  if (issue.code !== 'invalid_union') return [{ issue, path }];
  return issue.errors.flatMap((branch) => branch.flatMap((inner) => leavesOf(inner, path)));
}

function grammarIssue(issue: Issue): GrammarIssue | null {
  return issue.code === 'custom' && issue.params !== undefined
    ? (issue.params as unknown as GrammarIssue)
    : null;
}

/** Follows a path of the grammar: items of lists, and key (0) or value (1) of a map's pairs. */
function nodeAt(node: Node, [step, ...rest]: readonly PropertyKey[]): Node {
  if (typeof step !== 'number') return node;
  if (node instanceof List) return nodeAt(node.items[step] ?? node, rest);
  if (!(node instanceof Fields)) return node;
  const pair = node.pairs[step];
  const [side, ...deeper] = rest;
  return pair === undefined ? node : side === 0 ? pair[0] : nodeAt(pair[1], deeper);
}
