import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
const log = `
  date: 2026-03-01, laid: 3
  date: 2026-03-02, sitting: hen
  date: 2026-03-14, hatched: 3
  date: 2026-04-02, fledged: 3
  date: 2026-04-20, clutch: 2, laid: 1
  date: 2026-04-21, laid: 1
  date: 2026-04-22, laid: 1
  date: 2026-04-23, laid: 1, sitting: hen
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${log}\n${more}`, heads) });
const independent = 'date: 2026-04-25, clutch: 1, independent: all';

// Young that feed themselves move out before the next hatch: common practice.
describe('young of the last brood at the next hatch', () => {
  it('are said from three days before until four after the first chick', () => {
    const room = files(`${independent}\n date: 2026-05-05, hatched: 2`);
    expect(spell(room, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 … 05-09 watch']);
    expect(line(room, 'young-at-hatch', '2026-04-30').text).toMatch(
      /^Young of an earlier clutch are with the parents at the next hatch \(3–6 May\): LW-1\/1\/c1, LW-1\/1\/c2 and LW-1\/1\/c3\./,
    );
  });

  it('are counted from the first of the new chicks, not from the last', () => {
    const room = files(`${independent}\n date: 2026-05-05, hatched: 1\n date: 2026-05-07, hatched: 1`);
    expect(spell(room, 'young-at-hatch', '2026-05-01', '2026-05-31')).toEqual(['05-01 … 05-09 watch']);
    expect(line(room, 'young-at-hatch', '2026-05-07').text).toContain('at the next hatch (5 May)');
  });

  it('are counted from the hatch in that nest, not from a chick that was brought to it', () => {
    const guest =
      'date: 2026-04-11, laid: 3\n date: 2026-04-13, sitting: hen\n date: 2026-04-28, hatched: 3\n date: 2026-04-29, fostered: {LW-1: c1}';
    const room = { ...files(independent), 'BF-1': pair('BF-1', 'Bengalese finch', guest) };
    expect(spell(room, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 … 05-06 watch']);
  });

  it('are with those that reared them where nobody wrote who lives where', () => {
    const noHousing = 'cock: LW-20-01\nhen: LW-20-11';
    const reared = { 'LW-1': waxbills(`${log}\n${independent}`, noHousing) };
    expect(spell(reared, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 … 05-06 watch']);
    const given = {
      'LW-1': waxbills(
        `date: 2026-03-01, laid: 3, fostered: {BF-1: all}\n${log.slice(log.indexOf('date: 2026-04-20'))}`,
        noHousing,
      ),
      'BF-1': pair(
        'BF-1',
        'Bengalese finch',
        'date: 2026-03-02, sitting\n date: 2026-03-15, hatched: 3\n date: 2026-04-04, fledged: 3',
      ),
    };
    expect(spell(given, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual([]);
  });

  it('are no matter where the new eggs lie in an incubator', () => {
    const room = files(`${independent}\n date: 2026-04-26, set: {incubator: all}`);
    expect(spell(room, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual([]);
  });

  it('are told in the order of their clutches, whichever of them stands in the bird list', () => {
    const room = {
      ...files(independent),
      'birds.yaml': 'birds:\n  - {id: LW-26-03, is: LW-1/1/c3, species: lavender waxbill}\n',
    };
    expect(line(room, 'young-at-hatch', '2026-04-30').text).toMatch(/: LW-1\/1\/c1, LW-1\/1\/c2 and /);
  });

  it('that have lived there for four months are kept there on purpose', () => {
    const room = (later: string) => ({
      'LW-1': waxbills(`${log.replace(/04-2(\d)/g, `${later}$1`)}\n${independent}`, heads),
    });
    // Hatched on 14 March: four months are over on 12 July.
    expect(spell(room('06-2'), 'young-at-hatch', '2026-06-20', '2026-07-20')).toEqual([
      '06-30 … 07-06 watch',
    ]);
    expect(spell(room('07-1'), 'young-at-hatch', '2026-07-10', '2026-07-31')).toEqual([]);
    const july = log.replace(/04-2(\d)/g, (_all, on) => `07-0${Number(on) + 1}`);
    const meanwhile = { 'LW-1': waxbills(`${july}\n${independent}`, heads) };
    expect(spell(meanwhile, 'young-at-hatch', '2026-07-01', '2026-07-31')).toEqual(['07-11 … 07-12 watch']);
  });

  it('are over when nobody of the new clutch lives or may hatch', () => {
    const none = files(
      `${independent}\n date: 2026-05-05, hatched: 2\n date: 2026-05-06, died: all\n date: 2026-05-07, lost: all`,
    );
    expect(spell(none, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 … 05-06 watch']);
    const abandoned = files(`${independent}\n date: 2026-05-01, lost: all`);
    expect(spell(abandoned, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 watch']);
  });

  it('are with the hen where the cock was taken away', () => {
    const { text } = line(
      files(`${independent}\n date: 2026-04-26, parted: {cock: flight 7}`),
      'young-at-hatch',
      '2026-04-30',
    );
    expect(text).toMatch(/^Young of an earlier clutch are with the hen at the next hatch/);
  });

  it('are no matter where both parents are dead: nobody feeds the new chicks anyway', () => {
    expect(
      warned(files(`${independent}\n date: 2026-04-26, died: both`), 'young-at-hatch', '2026-04-30'),
    ).toEqual([]);
  });

  it('are over when they live elsewhere', () => {
    const room = files(
      `${independent}\n date: 2026-05-01, moved: {1/c1: young flight, 1/c2: young flight, 1/c3: young flight}`,
    );
    expect(spell(room, 'young-at-hatch', '2026-04-20', '2026-05-31')).toEqual(['04-30 watch']);
  });

  it('that are still fed are a note: they stay', () => {
    const { level, text, check } = line(files(''), 'young-at-hatch', '2026-04-30');
    expect(level).toBe('note');
    expect(text).toContain('3 still fed');
    expect(check).toBe(
      'who feeds them, and food enough for 3 young birds more; they stay until they feed themselves',
    );
  });

  it('are not fed any more at three months, though nobody wrote that they feed themselves', () => {
    const later = { 'LW-1': waxbills(log.replace(/04-2(\d)/g, '05-2$1'), heads) };
    const { level, text } = line(later, 'young-at-hatch', '2026-05-31');
    expect(level).toBe('watch');
    expect(text).toContain('LW-1/1/c1, LW-1/1/c2 and LW-1/1/c3.');
    expect(text).not.toContain('still fed');
  });

  it('of which some feed themselves: those move, the others stay', () => {
    const room = files('date: 2026-04-25, clutch: 1, independent: c1');
    const { level, text, check } = line(room, 'young-at-hatch', '2026-04-30');
    expect(level).toBe('watch');
    expect(text).toContain('LW-1/1/c1 and 2 still fed.');
    expect(check).toMatch(/; the others stay with who feeds them$/);
    const all = line(files(independent), 'young-at-hatch', '2026-04-30');
    expect(all.check).toBe('move out those that feed themselves, on an evening without a look into the nest');
  });

  it('of a large brood are named up to six', () => {
    const eight = log
      .replace('laid: 3', 'laid: 8')
      .replace('hatched: 3', 'hatched: 8')
      .replace('fledged: 3', 'fledged: 8');
    const room = { 'LW-1': waxbills(`${eight}\n${independent}`, heads) };
    expect(line(room, 'young-at-hatch', '2026-04-30').text).toContain('LW-1/1/c5, LW-1/1/c6 and 2 more.');
    const six = { 'LW-1': waxbills(`${eight.replaceAll(': 8', ': 6')}\n${independent}`, heads) };
    expect(line(six, 'young-at-hatch', '2026-04-30').text).toContain('LW-1/1/c5 and LW-1/1/c6.');
  });

  it('are this pair’s own, not those of neighbours in the flight', () => {
    const moved = 'date: 2026-05-01, moved: {1/c1: young flight, 1/c2: young flight, 1/c3: young flight}';
    const neighbours = waxbills(
      log.split('date: 2026-04-20')[0] as string,
      'cock: LW-20-02\nhen: LW-20-12\nhousing: flight 2',
    ).replace('pair: LW-1', 'pair: LW-2');
    const room = { ...files(`${independent}\n ${moved}`), 'LW-2': neighbours };
    expect(warned(room, 'young-at-hatch', '2026-05-02')).toEqual([]);
  });

  // King quail walk off as they hatch (common practice).
  it('are not the new chicks themselves, where those run on the day after they hatch', () => {
    const quails =
      'date: 2026-03-01, laid: 3\n date: 2026-03-02, sitting: hen\n date: 2026-03-18, hatched: 3';
    const room = { 'KQ-1': pair('KQ-1', 'king quail', `${quails}\n date: 2026-03-19, fledged: 3`) };
    expect(warned(room, 'young-at-hatch', '2026-03-20')).toEqual([]);
  });

  it('that died or left are not there', () => {
    const room = files(`${independent}\n date: 2026-04-26, gone: {sold: [1/c1, 1/c2]}, died: 1/c3`);
    expect(warned(room, 'young-at-hatch', '2026-05-01')).toEqual([]);
  });
});
