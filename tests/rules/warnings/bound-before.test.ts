import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const hen = 'hen: LW-20-11\ncock: LW-20-01';
const bound = `
  date: 2026-04-28, clutch: 1, laid: 1
  date: 2026-04-30, unwell: {hen: egg bound}
  date: 2026-04-30, treated: {hen: as the vet ordered}
  date: 2026-05-01, laid: 1
  date: 2026-05-02, unwell: {hen: well again}, lost: {broken: [e1, e2]}
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${bound}\n${more}`, hen) });

// That a hen once bound is let off for the season: common practice.
describe('a hen that could not pass an egg', () => {
  it('is better without a nest for the rest of the season', () => {
    const nest = files('date: 2026-05-08, nest: offered');
    expect(spell(nest, 'bound-before', '2026-04-28', '2026-06-30')).toEqual(['05-08 … 05-22 watch']);
    expect(line(nest, 'bound-before', '2026-05-08')).toMatchObject({
      text: 'The hen LW-20-11 could not pass an egg on 30 Apr. She has a nest again since 8 May; it can come back.',
      check: expect.stringContaining('ask an avian vet before she lays'),
    });
  });

  it('is looked at twice a day when she lays again', () => {
    const egg = files('date: 2026-05-08, nest: offered\n date: 2026-05-14, clutch: 2, laid: 1');
    expect(line(egg, 'bound-before', '2026-05-14')).toMatchObject({
      text: expect.stringContaining('She laid again on 14 May'),
      check: expect.stringMatching(/^look at her morning and evening/),
    });
  });

  it('is warned of with a cock as well, and not of the egg that she passed at last', () => {
    const mate = files('date: 2026-05-03, parted\n date: 2026-05-20, reunited');
    expect(spell(mate, 'bound-before', '2026-04-28', '2026-06-30')).toEqual(['05-20 … 06-03 watch']);
    expect(line(mate, 'bound-before', '2026-05-20').text).toContain('She has a mate again since 20 May;');
    expect(warned(files(''), 'bound-before', '2026-05-03')).toEqual([]);
    const held = files('date: 2026-05-04, clutch: 2, laid: 1');
    expect(warned(held, 'bound-before', '2026-05-04')).toEqual([]);
  });

  it('is not warned of the nest and the cock that she had when it happened', () => {
    const had = { 'LW-1': waxbills(`date: 2026-04-20, paired, nest: lined\n ${bound}`, hen) };
    expect(warned(had, 'bound-before', '2026-05-02')).toEqual([]);
  });

  it('is warned of the nest that was offered after she laid once more, and no more once she is dead', () => {
    const egg = 'date: 2026-05-14, clutch: 2, laid: 1\n date: 2026-05-16, lost: {broken: all}';
    const nest = files(`${egg}\n date: 2026-05-20, nest: offered\n date: 2026-05-22, died: hen`);
    expect(line(nest, 'bound-before', '2026-05-20').text).toContain('She has a nest again since 20 May;');
    expect(warned(nest, 'bound-before', '2026-05-22')).toEqual([]);
  });

  it('may breed again next year, and nothing is said of a nest that is taken out', () => {
    expect(warned(files('date: 2027-03-01, nest: offered'), 'bound-before', '2027-03-01')).toEqual([]);
    expect(warned(files('date: 2026-05-08, nest: removed'), 'bound-before', '2026-05-08')).toEqual([]);
  });
});
