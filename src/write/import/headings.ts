import { nearest } from '../../findings/nearest.ts';
import { Fields, List, type Node, Text } from '../../journal/nodes.ts';
import type { Mapping } from './mapping.ts';
import { type ImportProblem, problemIn } from './problem.ts';
import { holesOf, plainHeading, templateOf } from './template.ts';

/** Every heading that the mapping names. */
export function headingsOf({ header, words, skip, log }: Mapping): Set<string> {
  const named = new Set<string>([...words.keys()]);
  const take = (source: string) => {
    for (const { heading } of holesOf(templateOf(source))) named.add(heading);
  };
  for (const { source } of header.values()) take(source);
  for (const { heading } of [...skip, ...log.flatMap(({ when }) => when)]) named.add(heading);
  const walk = (node: Node): void => {
    if (node instanceof Text) take(node.text);
    else if (node instanceof List) node.items.forEach(walk);
    else if (node instanceof Fields) for (const pair of node.pairs) pair.forEach(walk);
  };
  for (const { fields: entry } of log) walk(entry);
  return named;
}

/** A problem for each heading of the mapping that no column of the table has, or more than one. */
export function unclearHeadings(mapping: Mapping, headings: readonly string[]): ImportProblem[] {
  const plain = headings.map(plainHeading);
  return [...headingsOf(mapping)].flatMap((heading) => {
    const [first, second] = plain.flatMap((one, index) => (one === plainHeading(heading) ? [index + 1] : []));
    if (first === undefined) {
      const near = nearest(heading, headings);
      const hint = near === null ? `the headings are ${headings.join(', ')}` : `did you mean <${near}>?`;
      return problemIn(mapping.file, {}, `the table has no column <${heading}>`, hint);
    }
    if (second === undefined) return [];
    const text = `the columns ${first} and ${second} of the table are both called <${heading}>`;
    return problemIn(mapping.file, {}, text, 'give one of them another heading in the table');
  });
}
