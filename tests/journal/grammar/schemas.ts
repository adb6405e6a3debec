import type * as z from 'zod';
import type { Finding } from '../../../src/findings/finding.ts';
import { Fields } from '../../../src/journal/nodes.ts';
import { readValue } from '../../../src/journal/read/value.ts';
import { Lines } from '../../../src/journal/text/lines.ts';
import { parseYaml } from '../../../src/journal/text/yaml.ts';
import { plain } from '../reading.ts';

/** What a schema makes of a value typed behind a key, without places; or the code of the finding. */
export function typedValue(schema: z.ZodType, typed: string): unknown {
  const text = `key: ${typed}`;
  const parsed = parseYaml(new Lines('a.yaml', text), { text, base: 0 });
  const [pair] = 'root' in parsed && parsed.root instanceof Fields ? parsed.root.pairs : [];
  if (pair === undefined) throw new Error(`no YAML: ${text}`);
  const findings: Finding[] = [];
  const value = readValue({ value: schema, takes: '', example: '' }, ...pair, findings);
  if (findings.length > 0) return findings.map(({ code }) => code).join();
  return JSON.parse(plain(value));
}
