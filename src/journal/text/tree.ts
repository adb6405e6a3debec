import type { Finding } from '../../findings/finding.ts';
import { Fields, List, type Node, Text } from '../nodes.ts';
import { append } from './append.ts';
import { readPlainLog } from './plain-log.ts';
import { prepare } from './prepare.ts';
import { Recovery, type Shape } from './recover.ts';
import { parseYaml } from './yaml.ts';

/** A file as located keys and values. */
export interface Tree {
  /** Null where there is nothing to read: then either the text is empty or a finding says why. */
  root: Fields | null;
  /** The text that the places of nodes and findings count in. */
  text: string;
  findings: Finding[];
}

const FEW = 3;

/** Reads a file's YAML, whole where it is sound and else piece by piece. Never throws. */
export function readTree(file: string, raw: string, shape: Shape): Tree {
  const findings: Finding[] = [];
  const { lines, yaml } = prepare(file, raw, findings);
  const { text } = lines;
  const whole = readPlainLog(lines, yaml) ?? parseYaml(lines, { text: yaml, base: 0 });
  if ('root' in whole) {
    append(findings, whole.findings);
    if (whole.root === null || whole.root instanceof Fields) return { root: whole.root, text, findings };
    findings.push({ code: 'not-a-mapping', at: whole.root.at, args: { file } });
    return { root: listOf(whole.root, shape), text, findings };
  }
  const recovery = new Recovery(lines, shape);
  const root = recovery.fields({ text: yaml, base: 0 });
  append(findings, recovery.findings);
  if (root.pairs.length > 0) return { root, text, findings };
  // Not one key could be read. One finding says more than one for each of many lines.
  if (recovery.findings.length > 0 && recovery.findings.length <= FEW) return { root: null, text, findings };
  findings.length -= recovery.findings.length;
  const start = Math.max(0, yaml.search(/\S/));
  findings.push({ code: 'not-a-mapping', at: lines.place(start, lines.lineEnd(start)), args: { file } });
  return { root: null, text, findings };
}

/** A list without the key above it is the first that such files hold: its items need not be lost with their key. */
function listOf(root: Node, shape: Shape): Fields | null {
  const [name] = Object.keys(shape);
  if (name === undefined || !(root instanceof List) || !root.items.some((item) => item instanceof Fields))
    return null;
  return new Fields([[new Text(name, root.at), root]], root.at, 'block');
}
