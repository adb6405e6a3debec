import { expect, it } from 'vitest';
import { pedigreeLines } from '../../../../src/report/terminal/bird/pedigree.ts';
import { birdIn, stock } from '../../../rules/stock/rooms.ts';

function tree(birds: string, name: string): string[] {
  const all = stock({ 'birds.yaml': `birds:\n${birds}` }, '2026-01-01');
  return pedigreeLines(birdIn(all, name).ancestor, ({ bird }) =>
    bird === null ? null : (all.of(bird)?.parents ?? null),
  );
}

it('has the sire above the dam, and a star at whoever stands in it twice', () => {
  const birds = `
  - {id: x, sire: a, dam: b}
  - {id: a, ring: R 1, sire: G}
  - {id: b, sire: G, dam: N}`;
  expect(tree(birds, 'x')).toEqual([
    'x',
    '├─ sire a (ring R 1)',
    '│  ├─ sire G *',
    '│  └─ dam unknown',
    '└─ dam b',
    '   ├─ sire G *',
    '   └─ dam N',
  ]);
});

it('says why a parent is not known', () => {
  expect(tree('  - {id: x, sire: [p, q]}', 'x')).toEqual([
    'x',
    '├─ sire unknown: one of p, q',
    '└─ dam unknown',
  ]);
});

it('goes four generations back, and no further', () => {
  const line = [1, 2, 3, 4, 5, 6].map((i) => `  - {id: b${i}, sire: b${i + 1}}`).join('\n');
  const lines = tree(line, 'b1');
  expect(
    lines.filter((each) => each.includes('sire b')).map((each) => each.trim().split(' ').at(-1)),
  ).toEqual(['b2', 'b3', 'b4', 'b5']);
});

it('does not run in circles', () => {
  expect(tree('  - {id: x, sire: y}\n  - {id: y, sire: x}\n  - {id: z, sire: x}', 'z')).toEqual(
    ['z', '├─ sire x', '│  ├─ sire unknown', '│  └─ dam unknown', '└─ dam unknown'].filter(
      (line) => !line.startsWith('│'),
    ),
  );
});
