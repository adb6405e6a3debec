import { expect, it } from 'vitest';
import { line, spell, waxbills } from './warned.ts';

const pulled = `
  date: 2026-03-01, laid: 1, pulled: e1
  date: 2026-03-02, laid: 1, pulled: e2
`;

// Back within about 4–7 d (common practice; pajaroscanarios.com on turning). No per-day decline was ever published for
// a finch, so none is said.
it('stored eggs are a note after five days and watched from seven; after fourteen nobody sets them', () => {
  const files = { 'LW-1': waxbills(pulled) };
  expect(spell(files, 'stored', '2026-03-01', '2026-03-31')).toEqual([
    '03-06 … 03-07 note',
    '03-08 … 03-16 watch',
  ]);
  expect(line(files, 'stored', '2026-03-06').text).toBe(
    'e1: 5 days in store since 1 Mar. Every day costs some of its chance to hatch.',
  );
  expect(line(files, 'stored', '2026-03-09').text).toBe(
    'e1 and e2: 7–8 days in store since 1–2 Mar. Every day costs some of their chance to hatch; a week is as long as most keepers wait.',
  );
});

it('a single egg is set back by itself, several together', () => {
  const check = (on: string) => line({ 'LW-1': waxbills(pulled) }, 'stored', on).check;
  expect(check('2026-03-06')).toMatch(/^set it back today/);
  expect(check('2026-03-07')).toMatch(/^set them back today/);
});

it('eggs pulled on one day are told with that day', () => {
  const together = waxbills('date: 2026-03-01, laid: 1\n date: 2026-03-02, laid: 1, pulled: all');
  expect(line({ 'LW-1': together }, 'stored', '2026-03-08').text).toMatch(
    /^e1 and e2: 6 days in store since 2 Mar\./,
  );
});

it('stored eggs that were set or ended are nothing', () => {
  const set = { 'LW-1': waxbills(`${pulled}\n date: 2026-03-08, set: all`) };
  expect(spell(set, 'stored', '2026-03-01', '2026-03-31')).toEqual(['03-06 … 03-07 note']);
  const lost = { 'LW-1': waxbills(`${pulled}\n date: 2026-03-07, lost: {removed: all}`) };
  expect(spell(lost, 'stored', '2026-03-01', '2026-03-31')).toEqual(['03-06 note']);
});

it('days in store of an egg that was stored twice are counted together', () => {
  const log = `
    date: 2026-03-01, laid: 1, pulled: e1
    date: 2026-03-04, set: all
    date: 2026-03-06, pulled: e1`;
  expect(spell({ 'LW-1': waxbills(log) }, 'stored', '2026-03-01', '2026-03-31')).toEqual([
    '03-08 … 03-09 note',
    '03-10 … 03-17 watch',
  ]);
});

it('no chance of hatching is ever printed', () => {
  expect(line({ 'LW-1': waxbills(pulled) }, 'stored', '2026-03-09').text).not.toMatch(/%|in 100/);
});
