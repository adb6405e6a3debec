import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const eggs = `
  date: 2026-03-01, laid: 4
  date: 2026-03-02, sitting: hen
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${eggs}\n${more}`) });

describe('a count that does not agree', () => {
  it('of eggs is a note for ten days', () => {
    const room = files('date: 2026-03-05, checked: {eggs: 3}');
    expect(spell(room, 'counts-differ', '2026-03-01', '2026-03-31')).toEqual(['03-05 … 03-15 note']);
    expect(line(room, 'counts-differ', '2026-03-05').text).toBe(
      '3 eggs seen on 5 Mar where the journal knows of 4. An egg may have been thrown out, eaten, or missed under the hen.',
    );
  });

  it.each([
    ['a later look finds them all', 'checked: {eggs: 4}'],
    ['somebody writes what became of it', 'lost: {thrown-out: 1}'],
  ])('is settled when %s', (_what, then) => {
    const room = files(`date: 2026-03-05, checked: {eggs: 3}\n date: 2026-03-07, ${then}`);
    expect(spell(room, 'counts-differ', '2026-03-01', '2026-03-31')).toEqual(['03-05 … 03-06 note']);
  });

  it('is one line, of the last look, where it disagrees again', () => {
    const room = files('date: 2026-03-05, checked: {eggs: 3}\n date: 2026-03-07, checked: {eggs: 2}');
    expect(line(room, 'counts-differ', '2026-03-07').text).toMatch(
      /^2 eggs seen on 7 Mar where the journal knows of 4/,
    );
  });

  it('with a chick missing sends to the floor', () => {
    const room = files('date: 2026-03-14, hatched: 3\n date: 2026-03-20, checked: {chicks: 2}');
    expect(line(room, 'counts-differ', '2026-03-20')).toMatchObject({ level: 'watch' });
    expect(line(room, 'counts-differ', '2026-03-20').check).toMatch(/^the floor below the nest, now/);
    expect(line(room, 'counts-differ', '2026-03-20').text).toBe(
      '2 chicks seen on 20 Mar where the journal knows of 3. A chick may lie on the floor, or have died and been carried off.',
    );
  });

  it('of chicks is settled when somebody writes which one died', () => {
    const room = files(
      'date: 2026-03-14, hatched: 3\n date: 2026-03-20, checked: {chicks: 2}\n date: 2026-03-22, died: c1',
    );
    expect(spell(room, 'counts-differ', '2026-03-01', '2026-04-10')).toEqual(['03-20 … 03-21 watch']);
  });

  it.each([
    [
      'the last chick died',
      'hatched: 3\n date: 2026-03-20, checked: {chicks: 2}\n date: 2026-03-22, died: all',
    ],
    [
      'none of more than were known is left',
      'hatched: 3\n date: 2026-03-20, checked: {chicks: 9}\n date: 2026-03-22, died: all',
    ],
  ])('of chicks is settled when %s: there is nobody left to be counted', (_what, log) => {
    const room = files(`date: 2026-03-14, ${log}`);
    expect(spell(room, 'counts-differ', '2026-03-01', '2026-04-10')).toEqual(['03-20 … 03-21 watch']);
  });

  it('of chicks is not settled when they leave the nest: the one that was missed may be among the dead', () => {
    const room = files(
      'date: 2026-03-14, hatched: 3\n date: 2026-04-01, checked: {chicks: 2}\n date: 2026-04-02, fledged: all',
    );
    expect(warned(room, 'counts-differ', '2026-04-03')).toHaveLength(1);
  });

  it('of eggs is settled when the whole clutch is lost, though the hen lays again', () => {
    const room = files(
      'date: 2026-03-05, checked: {eggs: 3}\n date: 2026-03-07, lost: all\n date: 2026-03-09, clutch: 2, laid: 1',
    );
    expect(spell(room, 'counts-differ', '2026-03-01', '2026-04-10')).toEqual(['03-05 … 03-06 note']);
  });

  it('says what to look for and which words to write', () => {
    const check = (more: string, on: string) => line(files(more), 'counts-differ', on).check;
    expect(check('date: 2026-03-05, checked: {eggs: 3}', '2026-03-05')).toBe(
      'count again at the next look, or write what became of the rest (`lost`, `laid`)',
    );
    const hatched = 'date: 2026-03-14, hatched: 2\n date: 2026-03-20,';
    expect(check(`${hatched} checked: {chicks: 1}`, '2026-03-20')).toBe(
      'the floor below the nest, now; then count again at the next look, or write what became of the rest (`died`, `hatched`)',
    );
    expect(check(`${hatched} checked: {chicks: 9}`, '2026-03-20')).toBe(
      'count again at the next look, or write what became of them (`died`, `hatched`)',
    );
  });

  it('tells of one egg as of one', () => {
    const room = files('date: 2026-03-05, checked: {eggs: 1}');
    expect(line(room, 'counts-differ', '2026-03-05').text).toMatch(/^1 egg seen on 5 Mar where/);
  });

  it('of chicks is settled when one of them is seen out of the nest: the others are those that were counted', () => {
    const room = files(
      'date: 2026-03-14, hatched: 3\n date: 2026-04-01, checked: {chicks: 2}\n date: 2026-04-03, fledged: c1',
    );
    expect(spell(room, 'counts-differ', '2026-03-20', '2026-04-20')).toEqual(['04-01 … 04-02 watch']);
  });

  it('of eggs where none was known any more is watched', () => {
    const room = files('date: 2026-03-10, lost: {eaten: all}\n date: 2026-03-11, checked: {eggs: 3}');
    expect(line(room, 'counts-differ', '2026-03-12')).toMatchObject({
      level: 'watch',
      text: expect.stringMatching(/^3 eggs seen on 11 Mar where the journal knows of 0\. Somebody laid/),
    });
  });

  it('of chicks is not settled by as many eggs', () => {
    // Three chicks and an egg are there; one chick is seen.
    const room = files('date: 2026-03-14, hatched: 3\n date: 2026-03-20, checked: {chicks: 1}');
    expect(warned(room, 'counts-differ', '2026-03-20')).toHaveLength(1);
  });

  it('by two helpers of one day is one line', () => {
    const room = files('date: 2026-03-05, checked: {eggs: 4}\n date: 2026-03-05, checked: {eggs: 3}');
    expect(warned(room, 'counts-differ', '2026-03-05')).toHaveLength(1);
  });
});

it('a count that agrees is nothing', () => {
  expect(warned(files('date: 2026-03-05, checked: {eggs: 4}'), 'counts-differ', '2026-03-05')).toEqual([]);
});
