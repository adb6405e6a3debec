import { isYoungOrParent } from '../grammar/turned-round.ts';
import { parseCount } from '../grammar/who.ts';
import { Fields, type Node, Text } from '../nodes.ts';

/** Longer words are a story, not a value. */
const LONGEST = 80;

/** Words that only join what stands around them, as in `e1 to LW-2`. */
const JOINING = /^(?:to|into|in|at|is|was|are|as|the|=|-)(?:\s+|$)|\s(?:to|into|in|at|is|was|are|as|=|-)$/g;

/**
 * What words without braces can mean where a map is asked for, `c1 LW 26 014`, `fertile e1` or `3 chicks`: each map that they
 * could be. Which of them is one the grammar says.
 */
export function inBraces(node: Node): Fields[] {
  if (!(node instanceof Text) || node.text.length > LONGEST) return [];
  const { at } = node;
  const words = node.text.trim().split(/\s+/);
  const [first = '', last = ''] = [words[0], words.at(-1)];
  return [
    { whom: first, said: words.slice(1) },
    { whom: last, said: words.slice(0, -1) },
  ].flatMap(({ whom, said }) => {
    const name = new Text(whom, at);
    const other = new Text(said.join(' ').replaceAll(JOINING, ''), at);
    if (!isYoungOrParent(name) || other.text === '' || parseCount(other) !== null) return [];
    const under = new Fields([[other, name]], at);
    // A number before others is a code's more often than a count: `ringed: 26 014`.
    return parseCount(name) === null ? [new Fields([[name, other]], at), under] : [under];
  });
}
