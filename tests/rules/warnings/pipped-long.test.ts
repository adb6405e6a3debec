import { expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const sat = `
  date: 2026-03-01, laid: 3
  date: 2026-03-02, sitting: hen
`;

// From the first crack to the chick: about a day in small perching birds, up to two in parrots (from memory).
it('an egg pipped for more than a day is watched for three, and nobody is told to peel it', () => {
  const files = { 'LW-1': waxbills(`${sat}\n date: 2026-03-13, pipped: [e1, e2]`) };
  expect(spell(files, 'pipped-long', '2026-03-10', '2026-03-31')).toEqual(['03-15 … 03-17 watch']);
  expect(line(files, 'pipped-long', '2026-03-15').text).toMatch(
    /^e1 and e2 pipped on 13 Mar and have not hatched; a day is usual\./,
  );
  expect(line(files, 'pipped-long', '2026-03-15').check).toContain('Do not peel it');
});

it('of eggs that pipped on two days each is told with its own', () => {
  const files = {
    'LW-1': waxbills(`${sat}\n date: 2026-03-13, pipped: [e1, e2]\n date: 2026-03-14, pipped: e3`),
  };
  expect(warned(files, 'pipped-long', '2026-03-16').map(({ text }) => text.split(' and ha')[0])).toEqual([
    'e1 and e2 pipped on 13 Mar',
    'e3 pipped on 14 Mar',
  ]);
});

it('it is over when they are out', () => {
  const files = { 'LW-1': waxbills(`${sat}\n date: 2026-03-13, pipped: e1\n date: 2026-03-16, hatched: e1`) };
  expect(spell(files, 'pipped-long', '2026-03-10', '2026-03-31')).toEqual(['03-15 watch']);
});

it('a parrot’s may take two days', () => {
  const log = `date: 2026-03-01, laid: 3\n date: 2026-03-02, sitting: hen\n date: 2026-03-20, pipped: e1`;
  expect(
    spell({ 'CO-1': pair('CO-1', 'cockatiel', log) }, 'pipped-long', '2026-03-15', '2026-03-31'),
  ).toEqual(['03-23 … 03-25 watch']);
  expect(line({ 'CO-1': pair('CO-1', 'cockatiel', log) }, 'pipped-long', '2026-03-23').text).toMatch(
    /^e1 pipped on 20 Mar and has not hatched; 2 days is usual\./i,
  );
});
