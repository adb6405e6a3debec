import { expect, it } from 'vitest';
import { partnersLost } from '../../../src/rules/account/partners.ts';
import { pairIn, waxbills } from '../../room/facts.ts';
import { room } from '../../rooms.ts';

/** What is told of the two up to July; nothing that begins with `private`. */
function lost(log: string): string[] {
  const known = room({ P: waxbills(log, 'cock: LW-19-04\nhen: LW-20-11') }, '2026-07-01');
  const discreet = (text: string) => (text.startsWith('private') ? null : text);
  return partnersLost(known, pairIn(known, 'LW-1'), discreet).map(({ text }) => text);
}

it('a cock or hen that died or left while they were the pair is told, with the cause that may be told', () => {
  expect(lost('date: 2026-02-01, paired')).toEqual([]);
  expect(lost('date: 2026-02-01, paired\ndate: 2026-03-01, died: cock')).toEqual(['the cock died']);
  expect(lost('date: 2026-02-01, paired\ndate: 2026-03-01, died: {night fright: hen}')).toEqual([
    'the hen died: night fright',
  ]);
  expect(lost('date: 2026-02-01, paired\ndate: 2026-03-01, died: {"private: my fault": hen}')).toEqual([
    'the hen died',
  ]);
  expect(lost('date: 2026-02-01, paired\ndate: 2026-03-01, gone: {sold: hen}')).toEqual([
    'the hen left the room',
  ]);
});

it('who was parted before is of the pair no longer', () => {
  expect(lost('date: 2026-02-01, paired\ndate: 2026-03-01, parted\ndate: 2026-03-09, died: cock')).toEqual(
    [],
  );
});

it('a hen that dies on the day on which she gets a new mate is told of once; who dies beside her is told too', () => {
  const anew =
    'date: 2026-02-01, paired\ndate: 2026-03-01, paired: {cock: LW-22-03}\ndate: 2026-03-01, died: ';
  expect(lost(`${anew}hen`)).toEqual(['the hen died']);
  expect(lost(`${anew}both`)).toEqual(['the hen died', 'the cock died']);
});
