import { describe, expect, it } from 'vitest';
import { discretionOf } from '../../../src/rules/discretion/discretion.ts';
import { type Tellable, tellable } from '../../../src/rules/discretion/tellable.ts';
import { type Files, record, room } from '../../rooms.ts';

const files: Files = {
  'nestlog.yaml': 'room: the elm room\n',
  'birds.yaml': `
    birds:
      - {id: LW-19-04, ring: LW 19 04, species: lavender waxbill, owner: Ada Loveday}
      - {id: A7, ring: "014", species: lavender waxbill}
      - {id: "*-*", species: lavender waxbill}
      - {id: "\u200B", species: lavender waxbill}
      - {id: Käthe, species: lavender waxbill}
      - {id: "Bru\u00ADno", species: lavender waxbill}
  `,
  'LW-1':
    'pair: LW-1\nspecies: lavender waxbill\ncock: LW-19-04\nhousing: flight 2\nlog:\n  - {date: 2026-01-01, paired}\n',
  'LW-12': 'pair: LW-12\nhousing: aviary\nlog:\n  - {date: 2026-01-01, paired}\n',
};

const say = (text: string, ...told: Tellable[]) =>
  discretionOf(record(files, '2026-06-01'), room(files, '2026-06-01'), new Set(told))(text);

describe('a keeper’s text', () => {
  it.each([
    ['given to LW-1 in flight 2', 'given to [pair] in [flight]'],
    ['given to LW-12', 'given to [pair]'],
    ['LW-123 is nobody here', 'LW-123 is nobody here'],
    ['lw1, LW 1 and L.W.1? no: lw.1', '[pair], [pair] and L.W.1? no: [pair]'],
    ['LW-1/2/c3 and LW-1/2 are told of with their pair', '[pair] and [pair] are told of with their pair'],
    ['flights 2 and 4 were warm', '[flight] and 4 were warm'],
    ['Flight 2’s door, flight2s door', '[flight]’s door, [flight]s door'],
    ['from cage 9 to Flight no. 31', 'from [cage] to [flight]'],
    ['a flight 3 m long, a cage 1.2 m, a cage 60 x 40', 'a flight 3 m long, a cage 1.2 m, a cage 60 x 40'],
    ['in the Elm Room, elm room', 'in the [room], [room]'],
    ['A7 flew, xA7x flew, A77 did not', '[bird] flew, xA7x flew, A77 did not'],
    ['ring 014 or 14, not 10140', 'ring [ring] or 14, not 10140'],
    ['bird *-* here', 'bird [bird] here'],
    ['bruno  sang', '[bird]  sang'],
    ['KÄTHE and Kathe', '[bird] and Kathe'],
    ['from Ada, Mrs Loveday', 'from [keeper], Mrs [keeper]'],
    ['an adage', 'an adage'],
    ['theLW-12 and A7/2', 'the[pair] and [bird]/2'],
    ['ring 9014 and 0145', 'ring 9014 and 0145'],
    ['two elm rooms', 'two [room]s'],
  ])('%s', (text, expected) => {
    expect(say(text)).toBe(expected);
  });

  it('names a longer name before a shorter one within it', () => {
    const nests = (housing: string, more: string) => ({
      P: `pair: P-1\nspecies: star finch\nhousing: ${housing}\nlog:\n  - {date: 2026-01-01, paired}\n`,
      Q: `pair: P-2\nspecies: star finch\nhousing: ${more}\nlog:\n  - {date: 2026-01-01, paired}\n`,
    });
    const told = (some: Files, text: string) =>
      discretionOf(record(some, '2026-06-01'), room(some, '2026-06-01'), new Set())(text);
    expect(told(nests('loft 1', 'loft 1 left'), 'moved from loft 1 left to loft 1')).toBe(
      'moved from [housing] to [housing]',
    );
    expect(told(nests('loft 2', 'loft 4'), 'lofts 2 and 4')).toBe('[housing] and 4');
  });

  it('knows the room with and without its article, and an article within its name', () => {
    const told = (name: string, text: string) => {
      const some = { 'nestlog.yaml': `room: ${name}\n` };
      return discretionOf(record(some, '2026-06-01'), room(some, '2026-06-01'), new Set())(text);
    };
    expect(told('a quiet room', 'in our quiet room')).toBe('in our [room]');
    expect(told('over the hill', 'sold over the hill')).toBe('sold [room]');
  });

  it.each([
    ['spelt with marks that nobody sees', 'L\u200BW\u2060-1 \u202E in flight\u00AD 2', '[pair]  in [flight]'],
    ['in wide letters', 'ＬＷ－１', '[pair]'],
    ['with a combining mark', 'Ka\u0308the', '[bird]'],
  ])('a name %s is a name', (_, text, expected) => {
    expect(say(text)).toBe(expected);
  });

  it('stays as it is, marks and all, where nobody is named', () => {
    expect(say('sat\u202E well 👩‍🌾 ﬁne')).toBe('sat\u202E well 👩‍🌾 ﬁne');
    expect(say('LW-123 sat\u202E well')).toBe('LW-123 sat\u202E well');
  });

  it('marked private is not told, whatever else may be', () => {
    expect(say('private: sold too cheap', ...tellable)).toBeNull();
  });

  it('tells what may be told, and still no other keeper', () => {
    const text = 'LW-1 in flight 2 of the elm room, ring 014, from Ada';
    expect(say(text, 'names')).toBe('LW-1 in [flight] of the [room], ring [ring], from [keeper]');
    expect(say(text, 'places')).toBe('[pair] in flight 2 of the elm room, ring [ring], from [keeper]');
    expect(say(text, 'rings')).toBe('[pair] in [flight] of the [room], ring 014, from [keeper]');
  });

  it('a bird called like its ring is not named by either word alone', () => {
    expect(say('LW-19-04', 'names')).toBe('[ring]');
    expect(say('LW 19 04', 'rings')).toBe('[bird]');
    expect(say('LW-19-04', 'names', 'rings')).toBe('LW-19-04');
  });

  it('of thousands of names and endless words is done in the time of a test', () => {
    const birds = Array.from({ length: 3000 }, (_, i) => `  - {id: X-${i}, ring: "R ${i}"}\n`).join('');
    const many = { 'birds.yaml': `birds:\n${birds}` };
    const discreet = discretionOf(record(many, '2026-06-01'), room(many, '2026-06-01'), new Set());
    expect(discreet(`${'x'.repeat(10_000)} X-17 r 2999`)).toBe(`${'x'.repeat(10_000)} [bird] [ring]`);
  });
});
