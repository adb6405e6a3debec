import { expect, it } from 'vitest';
import { handedOver } from '../../../src/rules/stock/handed-over.ts';
import { portraitOf } from '../../../src/rules/stock/portrait.ts';
import { stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, room } from '../../rooms.ts';

const files: Files = {
  'birds.yaml': `
    birds:
      - id: LW-19-04
        species: lavender waxbill
        origin: from Bela
        owner: Ada
        log:
          - {date: 2025-01-01, arrived: quarantine cage}
          - {date: 2025-02-01, released: flight 2, weighed: 8.4}
          - {date: 2025-03-01, moved: Elm Lane 4}
          - {date: 2025-04-01, unwell: "fluffed, told Bela", treated: "private: what the vet ordered"}
          - {date: 2025-05-01, moved: the aviary}
  `,
};

it('tells of an absence no more than of the end', () => {
  const missing: Files = {
    'birds.yaml': `
      birds:
        - id: LW-19-04
          species: lavender waxbill
          log:
            - {date: 2025-04-01, died: "carried off by Bela’s cat"}
            - {date: 2025-05-01, back}
    `,
  };
  const stock = stockOf(room(missing, '2026-01-01'));
  const [one] = stock.birds;
  if (one === undefined) throw new Error('no bird');
  const portrait = handedOver(portraitOf(one, stock), (text) => text.replace('Bela', '[keeper]'));
  expect(JSON.stringify(portrait.life)).toContain('[keeper]’s cat');
  expect(JSON.stringify(portrait.life)).not.toContain('Bela');
});

it('what goes with a bird is its life and health, no place, no other keeper, nothing private', () => {
  const stock = stockOf(room(files, '2026-01-01'));
  const [one] = stock.birds;
  if (one === undefined) throw new Error('no bird');
  const portrait = handedOver(portraitOf(one, stock), (text) =>
    text.startsWith('private') ? null : text.replace('Bela', '[keeper]'),
  );
  expect(portrait.one.housing).toBe('an aviary');
  expect(portrait.one.meanKinship).toBeNull();
  expect(portrait.life.map(({ what }) => what)).toEqual([
    'arrived',
    'in a cage',
    'let out of quarantine',
    'in a flight',
    'weighed 8.4 g',
    'unwell: fluffed, told [keeper]',
    'in an aviary',
  ]);
});

it('of how it ended, no more is told than may be', () => {
  const end = (how: string) => {
    const bird = `birds:\n  - {id: a, log: [{date: 2025-01-01, arrived}, {date: 2025-06-01, ${how}}]}\n`;
    const stock = stockOf(room({ 'birds.yaml': bird }, '2026-01-01'));
    const [one] = stock.birds;
    if (one === undefined) throw new Error('no bird');
    const portrait = handedOver(portraitOf(one, stock), (text) => text.replace('Bela', '[keeper]'));
    return portrait.life.at(-1)?.what;
  };
  expect(end('died: let out by Bela')).toBe('died: let out by [keeper]');
  expect(end('died')).toBe('died');
  expect(end('gone: sold')).toBe('sold');
});
