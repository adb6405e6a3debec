import { birdsAsOurs, birdsShape } from '../journal/birds.ts';
import { Empty, Fields, List, type Node, Text } from '../journal/nodes.ts';
import { journalAsOurs, pairShape } from '../journal/pair-journal.ts';
import { sameText } from '../journal/print.ts';
import { readTree } from '../journal/text/tree.ts';
import { insertionsOf } from './insertions.ts';
import { linesOf } from './log-lines.ts';

/** Whose log: the journal's own, or that of one bird of the list. */
export type Target = { of: 'pair' } | { of: 'bird'; id: string };

/** A change of one file, before anything is done. */
export interface EntryPlan {
  /** Relative to the room, with `/`. */
  path: string;
  before: string;
  after: string;
  /** What is new, and where: offset into both texts. Nothing else differs. */
  inserted: string;
  at: number;
  /** The new lines without their line ends, and the number of the first. */
  lines: string[];
  line: number;
}

const BYTE_ORDER_MARK = '\ufeff';

/**
 * Plans an entry at the end of a log. Every other byte stays. The planned text is read again: the plan is made only if it
 * says all that the file said, and the new entry, and nothing else. Null where no place for it is found.
 */
export function planEntry(
  file: { path: string; text: string },
  target: Target,
  entry: Fields,
): EntryPlan | null {
  const { path, text: before } = file;
  const mark = before.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : '';
  const text = before.slice(mark.length);
  const root = readAs(target, path, text);
  const owner = root === null ? null : ownerOf(root, target);
  if (root === null || owner === null) return null;
  const expected = sameText(withEntry(root, owner, entry));
  for (const insertion of insertionsOf(text, owner, entry, root === owner)) {
    const at = mark.length + insertion.at;
    const after = before.slice(0, at) + insertion.text + before.slice(at);
    const read = readAs(target, path, after);
    if (read === null || sameText(read) !== expected) continue;
    return { path, before, after, at, inserted: insertion.text, ...newLines(after, at, insertion.text) };
  }
  return null;
}

/** What a file says, under the keys that its reader takes them for; null where it is empty. */
function readAs({ of }: Target, path: string, text: string): Fields | null {
  const { root } = readTree(path, text, of === 'pair' ? pairShape : birdsShape);
  return root === null ? null : (of === 'pair' ? journalAsOurs : birdsAsOurs)(root, []);
}

/** The mapping that has the log. */
function ownerOf(root: Fields, target: Target): Fields | null {
  if (target.of === 'pair') return root;
  const birds = root.pairs.flatMap(([key, list]) =>
    key.text === 'birds' && list instanceof List ? list.items : [],
  );
  return birds.find((bird): bird is Fields => bird instanceof Fields && nameOf(bird) === target.id) ?? null;
}

/** A bird goes by its id, else by the chick that it is, else by its ring. */
function nameOf(bird: Fields): string | null {
  for (const name of ['id', 'is', 'ring']) {
    const value = bird.pairs.find(([key]) => key.text === name)?.[1];
    if (value instanceof Text) return value.text.trim();
  }
  return null;
}

/** What the file is to say afterwards. */
function withEntry(node: Node, owner: Fields, entry: Fields): Node {
  if (node instanceof List) {
    return new List(
      node.items.map((item) => withEntry(item, owner, entry)),
      node.at,
    );
  }
  if (!(node instanceof Fields)) return node;
  if (node !== owner) {
    const pairs = node.pairs.map(([key, value]) => [key, withEntry(value, owner, entry)] as const);
    return new Fields(pairs, node.at, node.style);
  }
  const index = node.pairs.findLastIndex(([key]) => key.text === 'log');
  const [key, log] = node.pairs[index] ?? [new Text('log', node.at), new Empty(node.at)];
  const longer = [key, new List([...(log instanceof List ? log.items : []), entry], log.at)] as const;
  const pairs = index < 0 ? [...node.pairs, longer] : node.pairs.with(index, longer);
  return new Fields(pairs, node.at, node.style);
}

function newLines(after: string, at: number, inserted: string): { lines: string[]; line: number } {
  const from = at + (/^(?:\r\n|\n|\r)/.exec(inserted)?.[0].length ?? 0);
  const to = at + inserted.trimEnd().length;
  const all = linesOf(after);
  const first = all.findLastIndex((line) => line.from <= from);
  const last = all.findLastIndex((line) => line.from < to);
  return {
    lines: all.slice(first, last + 1).map((line) => after.slice(line.from, line.to)),
    line: first + 1,
  };
}
