import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, codes, fates, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches, hatched, laid } from './waxbill-log.ts';

// A nest that was left alone once its first eggs were told: what hatched and flew there came of more than anybody saw.

describe('a hen of the shy kinds that was left alone while she laid', () => {
  // Lavender waxbills lay four or five, one a day, and are looked at sparingly (species profile).
  const one = 'date: 2026-03-05, laid: 1';
  const told = (log: string, head = '') => [
    ...clutches(log, '2026-07-01', head),
    ...at(log, '2026-07-01', head).findings.map(({ code, args }) => `${code} ${args.count}`),
  ];
  const three = ['1: 3+ eggs, 3 chicks', 'counted-as-laid 2'];

  it('laid the eggs that nobody saw, out of which more chicks came than eggs were told', () => {
    expect(told(`${one}\ndate: 2026-03-20, hatched: 3`)).toEqual(three);
    expect(told(`${one}\ndate: 2026-03-06, sitting\ndate: 2026-03-20, hatched: 3`)).toEqual(three);
    expect(fates(clutchIn(at(`${one}\ndate: 2026-03-20, hatched: 3`), 'LW-1/1'))).toEqual([
      'e1 hatched',
      'e2 hatched',
      'e3 hatched',
    ]);
    expect(laid(`${one}\ndate: 2026-03-20, hatched: 3`, 'LW-1/1/e3')).toBe('03-07…03-12');
  });

  it('laid them too where a look counted the chicks, or begging came first', () => {
    const looked = told(`${one}\ndate: 2026-03-20, checked: {chicks: 3}`);
    expect(looked.filter((line) => !line.startsWith('counted-as-hatched'))).toEqual(three);
    expect(told(`${one}\ndate: 2026-03-18, heard\ndate: 2026-03-20, hatched: 3`)).toEqual([
      '1: 3+ eggs, 3+ chicks',
      'counted-as-laid 2',
    ]);
  });

  it('laid no more than her kind lays', () => {
    expect(told(`${one}\ndate: 2026-03-20, hatched: 9`)).toEqual([
      '1: 5+ eggs, 5 chicks',
      'counted-as-laid 4',
      'too-many 9',
    ]);
    expect(told(`date: 2026-03-05, laid: 4\ndate: 2026-03-20, hatched: 5`)).toEqual([
      '1: 4 eggs, 4 chicks',
      'too-many 5',
    ]);
  });

  it('laid none where somebody looked when the next could have been there, where she is looked at freely, or too late', () => {
    const refused = ['1: 1 eggs, 1 chicks', 'too-many 3'];
    expect(told(`${one}\ndate: 2026-03-06, checked\ndate: 2026-03-20, hatched: 3`)).toEqual(three);
    expect(told(`${one}\ndate: 2026-03-07, checked\ndate: 2026-03-20, hatched: 3`)).toEqual(refused);
    expect(told(`${one}\ndate: 2026-03-20, after: 2026-03-18, hatched: 3`)).toEqual(refused);
    expect(told(`${one}\ndate: 2026-03-20, hatched: 3`, 'nest-looks: freely')).toEqual(refused);
    // Six days after it the second egg of the next day would be five old, less than half of eleven.
    expect(told(`${one}\ndate: 2026-03-11, hatched: 2`)).toEqual(['1: 1 eggs, 1 chicks', 'too-many 2']);
    expect(told(`${one}\ndate: 2026-03-12, hatched: 2`)).toEqual([
      '1: 2+ eggs, 2 chicks',
      'counted-as-laid 1',
    ]);
  });

  it('has no egg at home out of which they came, where hers is with another pair', () => {
    const files = {
      P: waxbills(`${one}\ndate: 2026-03-06, fostered: {BF-1: all}\ndate: 2026-03-20, hatched: 2`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-01, paired'),
    };
    expect(codes(room(files, '2026-07-01'))).toEqual(['too-many']);
  });
});

describe('a look that counts more than was told before somebody went away', () => {
  // Lavender waxbills lay four or five, one a day; looked at freely they are still not looked at while nobody is there.
  const two = 'date: 2026-03-04, laid: 1\ndate: 2026-03-05, laid: 1';
  const told = (log: string, head = 'nest-looks: freely') => [
    ...clutches(log, '2026-07-01', head),
    ...at(log, '2026-07-01', head).findings.map(({ code }) => code),
  ];

  it('finds the eggs that were laid meanwhile, whether young lie beside them or not', () => {
    expect(told(`${two}\ndate: 2026-03-15, checked: {eggs: 4}`)).toEqual([
      '1: 4+ eggs, 0 chicks',
      'counted-as-laid',
    ]);
    for (const chicks of [2, 3]) {
      const look = `date: 2026-03-18, checked: {chicks: ${chicks}, eggs: ${5 - chicks}}`;
      expect(told(`${two}\n${look}`)).toContain(`1: 5+ eggs, ${chicks} chicks`);
      expect(told(`${two}\n${look}`)).not.toContain('counts-differ');
    }
    expect(laid(`${two}\ndate: 2026-03-18, checked: {chicks: 2, eggs: 2}`, 'LW-1/1/e3')).toBe('03-06…03-11');
  });

  it('finds them at the next look, too, where the first told only who had hatched', () => {
    const hatched = `${two}\ndate: 2026-03-17, hatched: 1`;
    expect(told(`${hatched}\ndate: 2026-03-19, checked: {chicks: 1, eggs: 3}`)).toEqual([
      '1: 4+ eggs, 1 chicks',
      'counted-as-laid',
    ]);
    expect(told(`date: 2026-03-05, laid: 1\ndate: 2026-03-17, hatched: 1, checked: {eggs: 2}`)).toEqual([
      '1: 3+ eggs, 1 chicks',
      'counted-as-laid',
    ]);
  });

  it('finds none that her kind does not lay, nor where somebody would have seen them, nor long after', () => {
    const differ = expect.arrayContaining(['counts-differ']);
    expect(told(`${two}\ndate: 2026-03-15, checked: {eggs: 6}`)).toEqual(differ);
    expect(told(`${two}\ndate: 2026-03-07, checked\ndate: 2026-03-15, checked: {eggs: 4}`)).toEqual(differ);
    const seen = `${two}\ndate: 2026-03-17, hatched: 1\ndate: 2026-03-19, checked`;
    expect(told(`${seen}\ndate: 2026-03-20, checked: {chicks: 1, eggs: 3}`)).toEqual(differ);
    expect(told(`${two}\ndate: 2026-04-15, checked: {eggs: 4}`)).not.toContain('1: 4+ eggs, 0 chicks');
  });

  it('may be of the morning: who hatched later that day was one of its eggs', () => {
    expect(
      told(`${two}\ndate: 2026-03-17, time: "12:00", hatched: 1\ndate: 2026-03-17, checked: {eggs: 2}`),
    ).toEqual(['1: 2 eggs, 1 chicks']);
  });
});

describe('young that come out of a nest whose eggs were told and then left alone', () => {
  const four = 'date: 2026-03-05, laid: 4, sitting';

  it('came of these eggs; how many hatched nobody knows', () => {
    expect(clutches(`${four}\ndate: 2026-04-05, fledged: 3`)).toEqual(['1: 4 eggs, 3+ chicks']);
    expect(clutches(`${four}\ndate: 2026-04-05, clutch: 1, fledged: 3`)).toEqual(['1: 4 eggs, 3+ chicks']);
    expect(codes(at(`${four}\ndate: 2026-04-05, fledged: 3`))).toEqual([]);
    expect(hatched(`${four}\ndate: 2026-04-05, fledged: 3`)).toBe('03-15…03-19');
    expect(
      fates(
        clutchIn(
          at(`${four}\ndate: 2026-03-12, candled: {clear: e1}\ndate: 2026-04-05, fledged: 3`),
          'LW-1/1',
        ),
      ),
    ).toEqual(['e1 open', 'e2 hatched', 'e3 hatched', 'e4 hatched']);
  });

  it('came of eggs laid unseen as well where more came than were told', () => {
    const one = 'date: 2026-03-05, laid: 1';
    for (const heard of ['', '\ndate: 2026-03-20, heard']) {
      const log = `${one}${heard}\ndate: 2026-04-05, fledged: 3`;
      expect(clutches(log), heard).toEqual(['1: 3+ eggs, 3+ chicks']);
      expect(codes(at(log)), heard).toEqual(['counted-as-laid']);
    }
    expect(codes(at(`${four}\ndate: 2026-04-05, fledged: 5`))).toEqual(['too-many']);
  });

  describe('of which fewer were told to have hatched', () => {
    const hatched = `${four}\ndate: 2026-03-18, hatched: 2`;
    const told = (log: string) => codes(at(`${hatched}\n${log}`));
    const fourEggs = (log: string) => fates(clutchIn(at(`${hatched}\n${log}`), 'LW-1/1'));

    it('hatched after that, whether they leave it with the others or days later', () => {
      for (const log of [
        'date: 2026-04-05, fledged: 3',
        'date: 2026-04-05, fledged: 2\ndate: 2026-04-11, fledged: 1',
      ]) {
        expect(told(log), log).toEqual(['counted-as-hatched']);
        expect(fourEggs(log), log).toEqual(['e1 hatched', 'e2 hatched', 'e3 hatched', 'e4 open']);
      }
    });

    it('are none while the pair’s young are with foster parents: they are who left a nest', () => {
      const files = {
        P: waxbills(`${hatched}\ndate: 2026-03-20, fostered: {BF-1: 1}\ndate: 2026-04-05, fledged: 2`),
        Q: journal('BF-1', 'bengalese finch', ''),
      };
      expect(codes(room(files, '2026-07-01'))).toEqual(['too-many']);
    });

    it.each([
      ['who counts more than eggs were left counted wrong', 'date: 2026-04-05, fledged: 5'],
      [
        'who counts them again counted the same',
        'date: 2026-04-05, fledged: 2\ndate: 2026-04-06, fledged: 4',
      ],
      ['a look since found no more', 'date: 2026-03-25, checked: {chicks: 2}\ndate: 2026-04-05, fledged: 3'],
      [
        'they come back to sleep and leave it again',
        'date: 2026-04-05, fledged: 2, roosting: nest\ndate: 2026-04-06, fledged: 1',
      ],
      ['their brood is out since long', 'date: 2026-04-05, fledged: 2\ndate: 2026-04-12, fledged: 1'],
      [
        'the lamp showed the others clear',
        'date: 2026-03-19, candled: {clear: [e3, e4]}\ndate: 2026-04-05, fledged: 3',
      ],
      [
        'the lamp showed the others dead',
        'date: 2026-03-19, candled: {dead: [e3, e4]}\ndate: 2026-04-05, fledged: 3',
      ],
    ])('are none where %s', (_, log) => {
      expect(told(log)).toEqual(['too-many']);
      expect(fourEggs(log)).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 open']);
    });
  });

  it('are not of eggs seen whole after that, nor of eggs too young', () => {
    const first = (log: string) => fates(clutchIn(at(log), 'LW-1/1'));
    const open = ['e1 open', 'e2 open', 'e3 open', 'e4 open'];
    expect(first(`${four}\ndate: 2026-03-30, checked: {eggs: 4}\ndate: 2026-04-05, fledged: 3`)).toEqual(
      open,
    );
    expect(first('date: 2026-03-25, laid: 1\ndate: 2026-04-05, fledged: 3')).toEqual(['e1 open']);
  });

  it('are of the second lot of eggs that was brought there once the first has flown', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 3\ndate: 2026-03-06, fostered: {BF-1: all}'),
      R: journal(
        'LW-2',
        'lavender waxbill',
        'date: 2026-03-22, laid: 3\ndate: 2026-03-23, fostered: {BF-1: all}',
      ),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-07, sitting\ndate: 2026-03-19, heard\ndate: 2026-04-08, fledged: 3\ndate: 2026-04-27, fledged: 3',
      ),
    };
    const known = room(files, '2026-07-01');
    expect(codes(known)).toEqual([]);
    expect(pairIn(known, 'BF-1').clutches).toEqual([]);
    for (const id of ['LW-1/1', 'LW-2/1'])
      expect(
        clutchIn(known, id).chicks.map(({ fledged }) => fledged?.day),
        id,
      ).toHaveLength(3);
  });

  it('are of the pair whose eggs were brought there', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-06, fostered: {BF-1: all}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-07, sitting\ndate: 2026-04-12, fledged: 3'),
    };
    const known = room(files, '2026-07-01');
    expect(pairIn(known, 'BF-1').clutches).toEqual([]);
    expect(clutchIn(known, 'LW-1/1').chicks.map((chick) => chick.fledged !== null)).toEqual([
      true,
      true,
      true,
    ]);
  });
});
