import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { layerOf, layers, wrongImports } from './layers.mjs';

const complaintsOn = (path: string, text: string) => wrongImports([{ path, text }]).map(({ what }) => what);

it('knows every folder and file at the top of src', () => {
  // The keeper's pages hold no code.
  const names = readdirSync(join(root, 'src'))
    .filter((name) => name !== 'manual')
    .map((name) => layerOf(`src/${name}`));
  expect(names.filter((name) => layers[name] === undefined)).toEqual([]);
});

it('lets an upper layer import from a lower one, not the other way', () => {
  expect(complaintsOn('src/rules/agenda/due.ts', "import { fold } from '../../room/fold.ts';")).toEqual([]);
  expect(complaintsOn('src/room/fold.ts', "import { due } from '../rules/agenda/due.ts';")).toEqual([
    'room may not import from rules',
  ]);
  expect(complaintsOn('src/write/record.ts', "import { show } from '../report/terminal/due.ts';")).toEqual([
    'write may not import from report',
  ]);
  expect(complaintsOn('src/days.ts', "export { x } from './statistics/normal.ts';")).toHaveLength(1);
});

it('lets report know the types of rules and room, not their code', () => {
  const report = (text: string) => complaintsOn('src/report/terminal/due.ts', text);
  expect(report("import type { Item } from '../../rules/agenda/item.ts';")).toEqual([]);
  expect(report("import { type Item, type State } from '../../rules/agenda/item.ts';")).toEqual([]);
  expect(report("export type { Item } from '../../rules/agenda/item.ts';")).toEqual([]);
  for (const text of [
    "import { agenda, type Item } from '../../rules/agenda/item.ts';",
    "import '../../rules/agenda/item.ts';",
    "import * as item from '../../rules/agenda/item.ts';",
    "const item = import('../../rules/agenda/item.ts');",
  ]) {
    expect(report(text)).toEqual(['report may know the types of rules only (import type)']);
  }
});

it('keeps files and processes out of the pure layers', () => {
  const text = "import { readFileSync } from 'node:fs';";
  expect(complaintsOn('src/rules/brood.ts', text)).toHaveLength(1);
  expect(complaintsOn('src/journal/nodes.ts', text)).toHaveLength(1);
  expect(complaintsOn('src/journal/load.ts', text)).toEqual([]);
  expect(complaintsOn('src/commands/due.ts', text)).toEqual([]);
});

it('wants a new folder in its table, and says where the line is', () => {
  expect(complaintsOn('src/utils/misc.ts', '')).toEqual(['utils is no layer of tests/tools/layers.mjs']);
  const text = "\n\nimport { due } from '../rules/due.ts';";
  expect(wrongImports([{ path: 'src/room/fold.ts', text }])).toMatchObject([
    { path: 'src/room/fold.ts', line: 3 },
  ]);
});
