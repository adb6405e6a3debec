import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11';
const clutch = (n: number, month: string) => `
  date: 2026-${month}-01, clutch: ${n}, laid: 1
  date: 2026-${month}-02, laid: 1
  date: 2026-${month}-20, lost: {clear: all}, nest: removed`;
const three = [clutch(1, '01'), clutch(2, '02'), clutch(3, '03')].join('\n');
const files = (more: string, limit = '') => ({
  'nestlog.yaml': limit,
  'LW-1': waxbills(`${three}\n${more}`, heads),
});

// Three clutches a year, in the profile: common practice; two for a zebra finch stud (Bird Scene 2018).
describe('a hen that has had her clutches of the year', () => {
  it('is said when another nest is offered, for a fortnight', () => {
    const room = files('date: 2026-04-10, nest: offered');
    expect(spell(room, 'over-limit', '2026-03-20', '2026-05-10')).toEqual(['04-10 … 04-24 watch']);
    expect(line(room, 'over-limit', '2026-04-10').text).toMatch(
      /^The hen LW-20-11 has had 3 clutches in a year and was offered a nest on 10 Apr; 3 is the most for the species\./,
    );
    expect(line(room, 'over-limit', '2026-04-10').check).toMatch(
      /^take the nest out while it is empty, or part them for a rest\./,
    );
    const one = {
      'nestlog.yaml': 'limits: {clutches-per-year: 1}\n',
      'LW-1': waxbills(`${clutch(1, '01')}\n date: 2026-02-10, nest: offered`, heads),
    };
    expect(line(one, 'over-limit', '2026-02-10').text).toContain('has had 1 clutch in a year');
  });

  it.each([
    ['the nest is removed', 'nest: removed'],
    ['they are parted', 'parted'],
    ['she has died', 'died: hen'],
  ])('is over when %s', (_what, then) => {
    const room = files(`date: 2026-04-10, nest: offered\n date: 2026-04-12, ${then}`);
    expect(spell(room, 'over-limit', '2026-03-20', '2026-05-10')).toEqual(['04-10 … 04-11 watch']);
  });

  it('is said when she lays again, until every egg of that clutch has an end', () => {
    const room = files(
      'date: 2026-04-10, laid: 1\n date: 2026-04-11, laid: 1\n date: 2026-04-14, lost: {removed: all}',
    );
    expect(spell(room, 'over-limit', '2026-03-20', '2026-05-10')).toEqual(['04-10 … 04-13 watch']);
    expect(line(room, 'over-limit', '2026-04-10').text).toContain('laid again on 10 Apr: clutch 4 in a year');
    expect(line(room, 'over-limit', '2026-04-10').check).toMatch(/^her weight and breast; calcium on offer;/);
    const one = files(
      'date: 2026-04-10, laid: 1\n date: 2026-04-11, laid: 1\n date: 2026-04-14, lost: {broken: e1}',
    );
    expect(spell(one, 'over-limit', '2026-03-20', '2026-05-10')).toEqual(['04-10 … 04-24 watch']);
    expect(warned(one, 'over-limit', '2026-04-14')).toMatchObject([{ clutch: 4 }]);
  });

  it('is not said of the nest in which she laid the last of them, while she sits or after it was lost', () => {
    const two = `${clutch(1, '01')}\n${clutch(2, '02')}`;
    const third = (more: string) => ({
      'LW-1': waxbills(
        `${two}\n date: 2026-02-28, nest: lined\n date: 2026-03-01, clutch: 3, laid: 1\n date: 2026-03-02, laid: 1\n ${more}`,
        heads,
      ),
    });
    const lost = third('date: 2026-03-05, lost: {eaten: all}');
    expect(warned(lost, 'over-limit', '2026-03-05')).toEqual([]);
    const sits = third('date: 2026-03-03, sitting: hen\n date: 2026-03-05, lost: {broken: e1}, nest: lined');
    expect(warned(sits, 'over-limit', '2026-03-05')).toEqual([]);
  });

  it('is reckoned by the room’s limit, where it has one', () => {
    const two = 'limits: {clutches-per-year: 2}\n';
    expect(line(files('', two), 'over-limit', '2026-03-02').text).toContain(
      'clutch 3 in a year; 2 is this room’s limit',
    );
    const five = 'limits: {clutches-per-year: 5}\n';
    expect(warned(files('date: 2026-04-10, laid: 1', five), 'over-limit', '2026-04-10')).toEqual([]);
  });

  it('has a new year when the oldest clutch is 365 days old', () => {
    expect(warned(files('date: 2026-12-31, nest: offered'), 'over-limit', '2026-12-31')).toHaveLength(1);
    expect(warned(files('date: 2027-01-01, nest: offered'), 'over-limit', '2027-01-01')).toEqual([]);
  });

  it('is not said of the nest of young that are still in it', () => {
    const rear = (more: string) => ({
      'nestlog.yaml': '',
      'LW-1': waxbills(
        `${clutch(1, '01')}\n${clutch(2, '02')}
        date: 2026-03-01, clutch: 3, laid: 1
        date: 2026-03-02, laid: 1, sitting
        date: 2026-03-15, hatched: 2
        ${more}`,
        heads,
      ),
    });
    const said = (more: string, on: string) => warned(rear(more), 'over-limit', on).length;
    expect(said('date: 2026-03-20, nest: lined', '2026-03-20')).toBe(0);
    expect(said('date: 2026-03-20, died: c1, nest: lined', '2026-03-20')).toBe(0);
    expect(said('date: 2026-03-20, died: all\n date: 2026-03-22, nest: offered', '2026-03-22')).toBe(1);
    expect(said('date: 2026-04-03, fledged: all\n date: 2026-04-10, nest: offered', '2026-04-10')).toBe(1);
  });

  it('is reckoned over all pairs that she was in', () => {
    const room = {
      'LW-1': waxbills(`${three}\n date: 2026-03-25, parted`, heads),
      'LW-2': waxbills(
        'date: 2026-04-01, paired\n date: 2026-04-10, nest: offered',
        'cock: LW-20-05\nhen: LW-20-11',
      ).replace('LW-1', 'LW-2'),
    };
    expect(warned(room, 'over-limit', '2026-04-10')).toMatchObject([{ pair: 'LW-2' }]);
  });
});
