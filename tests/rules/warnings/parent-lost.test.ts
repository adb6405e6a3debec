import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11';
const eggs = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1
  date: 2026-03-04, laid: 1, sitting: hen
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${eggs}\n${more}`, heads) });
const neighbour = (id: string, species: string, first: number) =>
  pair(
    id,
    species,
    [0, 1, 2].map((i) => `date: 2026-03-0${first + i}, laid: 1${i === 2 ? ', sitting: hen' : ''}`).join('\n'),
  );

describe('a parent lost with eggs', () => {
  it('presses for three days, is watched for a week, and says that nobody wrote whether the other goes on', () => {
    const room = files('date: 2026-03-08, died: {found on the floor: hen}');
    expect(spell(room, 'parent-lost', '2026-03-01', '2026-03-31')).toEqual([
      '03-08 … 03-11 act',
      '03-12 … 03-15 watch',
    ]);
    expect(line(room, 'parent-lost', '2026-03-08').text).toBe(
      'The hen LW-20-11 died on 8 Mar, with 4 eggs in the nest. Nobody wrote yet whether the cock goes on alone; unwarmed they last hours. No pair in this room is at that stage and has room.',
    );
  });

  // No egg of a finch hatches a fortnight after its brothers and sisters (common practice): what is left is cold already.
  it('is silent of eggs left over beside young that are out of the nest: those need who feeds them', () => {
    const room = {
      'LW-1': waxbills(
        `${eggs}
         date: 2026-03-16, hatched: 2
         date: 2026-04-04, fledged: all
         date: 2026-04-08, parted: {hen: cage 6}`,
        `${heads}\nhousing: flight 2`,
      ),
    };
    expect(warned(room, 'parent-lost', '2026-04-08')).toEqual([]);
    const { level, text } = line(room, 'feeder-away', '2026-04-08');
    expect(level).toBe('act');
    expect(text).toContain(
      'The hen LW-20-11 was taken away on 8 Apr while the young still depend on being fed',
    );
  });

  it('tells of one egg as of one', () => {
    const one = waxbills('date: 2026-03-01, laid: 1, sitting: hen\n date: 2026-03-08, died: hen', heads);
    const { text, check } = line({ 'LW-1': one }, 'parent-lost', '2026-03-08');
    expect(text).toContain(
      'with 1 egg in the nest. Nobody wrote yet whether the cock goes on alone; unwarmed it lasts hours.',
    );
    expect(check).toMatch(/^now: is it warm, .*If not, give it to another pair/);
  });

  it('is watched only, once the other was seen sitting on a later day', () => {
    const room = files('date: 2026-03-08, died: hen\n date: 2026-03-09, sitting: cock');
    expect(spell(room, 'parent-lost', '2026-03-01', '2026-03-31')).toEqual([
      '03-08 act',
      '03-09 … 03-15 watch',
    ]);
    expect(line(room, 'parent-lost', '2026-03-09').text).toContain('The cock was seen going on alone.');
  });

  it('is not settled by who was seen on the eggs on that very day, nor by a line that says the lost one sits', () => {
    const { level, text } = line(
      files('date: 2026-03-08, died: hen, sitting: cock'),
      'parent-lost',
      '2026-03-08',
    );
    expect(level).toBe('act');
    expect(text).toContain('Nobody wrote yet whether the cock goes on alone');
    const taken = {
      'LW-1': waxbills(
        `${eggs}\n date: 2026-03-08, moved: {hen: cage 4}\n date: 2026-03-09, sitting: hen`,
        `${heads}\nhousing: flight 2`,
      ),
    };
    expect(line(taken, 'parent-lost', '2026-03-09').level).toBe('act');
  });

  it('has cold eggs where a look since found nobody on them, on the very day too, not where one before did', () => {
    const text = (looks: string) => line(files(looks), 'parent-lost', '2026-03-09').text;
    expect(text('date: 2026-03-08, died: hen, sitting: off')).toContain('Nobody was on them on 8 Mar;');
    expect(text('date: 2026-03-06, sitting: off\n date: 2026-03-08, died: hen')).toContain(
      'Nobody wrote yet whether the cock goes on alone;',
    );
  });

  it('asks a vet what the other died of; where it was taken away or flew off, how the one is that goes on alone', () => {
    for (const lost of ['moved: {hen: cage 4}', 'gone: {escaped: hen}']) {
      const room = {
        'LW-1': waxbills(
          `${eggs}\n date: 2026-03-08, ${lost}\n date: 2026-03-09, sitting: cock`,
          `${heads}\nhousing: flight 2`,
        ),
      };
      const { check } = line(room, 'parent-lost', '2026-03-09');
      expect(check).toBe(
        'at dusk, that the one that is left still sits or broods and feeds; an avian vet if it is not well',
      );
    }
    const died = files('date: 2026-03-08, died: hen\n date: 2026-03-09, sitting: cock');
    expect(line(died, 'parent-lost', '2026-03-09').check).toContain(
      'what the other died of, with an avian vet',
    );
  });

  it('presses anew where the chick that was fed since has died, or its crop was empty', () => {
    const level = (more: string) =>
      line(
        files(
          `date: 2026-03-15, hatched: e1\n date: 2026-03-16, died: hen\n date: 2026-03-17, crops: {full: c1}\n${more}`,
        ),
        'parent-lost',
        '2026-03-19',
      ).level;
    expect(level('date: 2026-03-18, hatched: e2')).toBe('watch');
    expect(level('date: 2026-03-18, died: {cold: c1}, hatched: e2')).toBe('act');
    expect(level('date: 2026-03-18, crops: {empty: c1}')).toBe('act');
  });

  it('presses on where nobody was on the eggs since', () => {
    const room = files('date: 2026-03-08, died: hen\n date: 2026-03-09, sitting: off');
    expect(line(room, 'parent-lost', '2026-03-09')).toMatchObject({ level: 'act' });
  });

  it('asks for the other parent only where there is one', () => {
    const check = (more: string) =>
      line(files(`date: 2026-03-08, died: hen${more}`), 'parent-lost', '2026-03-08').check;
    expect(check('')).toMatch(/^now: are they warm, and does the other parent sit, brood and feed\?/);
    expect(check(', gone: {escaped: cock}')).toMatch(/^now: are they warm\? If not/);
  });

  it('is over when the eggs lie elsewhere', () => {
    const room = { ...files('date: 2026-03-08, died: hen\n date: 2026-03-09, fostered: {LW-2: all}') };
    expect(
      spell(
        { ...room, 'LW-2': neighbour('LW-2', 'lavender waxbill', 2) },
        'parent-lost',
        '2026-03-08',
        '2026-03-31',
      ),
    ).toEqual(['03-08 act']);
    const warmed = files('date: 2026-03-08, died: hen\n date: 2026-03-09, set: {incubator: all}');
    expect(spell(warmed, 'parent-lost', '2026-03-08', '2026-03-31')).toEqual(['03-08 act']);
  });

  it('is as bad where the eggs are those of another pair alone', () => {
    const room = {
      'LW-1': waxbills('date: 2026-03-01, paired\n date: 2026-03-08, died: hen', heads),
      'LW-2': pair('LW-2', 'lavender waxbill', `${eggs}\n date: 2026-03-05, fostered: {LW-1: all}`),
    };
    expect(line(room, 'parent-lost', '2026-03-08')).toMatchObject({
      level: 'act',
      text: expect.stringContaining('with 4 eggs in the nest. Nobody wrote yet whether the cock goes on'),
    });
  });

  it('has nobody left when both are gone', () => {
    const room = files('date: 2026-03-08, died: hen\n date: 2026-03-08, gone: {escaped: cock}');
    expect(line(room, 'parent-lost', '2026-03-08').text).toMatch(
      /^The cock LW-20-01 left the room and the hen LW-20-11 died on 8 Mar, .* Nobody is left to keep them warm\./,
    );
  });

  it('is nothing when no egg may hatch any more', () => {
    const room = files('date: 2026-03-10, candled: {clear: all}\n date: 2026-03-11, died: hen');
    expect(warned(room, 'parent-lost', '2026-03-11')).toEqual([]);
  });
});

// Fostering within two days of stage: common practice.
describe('who could take them', () => {
  it('names pairs whose hatching is within two days and that have room, own species first', () => {
    const room = {
      ...files('date: 2026-03-08, died: hen'),
      'LW-2': neighbour('LW-2', 'lavender waxbill', 2),
      'LW-3': neighbour('LW-3', 'lavender waxbill', 7),
      'OC-1': neighbour('OC-1', 'orange-cheeked waxbill', 3),
      'CO-1': neighbour('CO-1', 'cockatiel', 2),
    };
    const { text } = line(room, 'parent-lost', '2026-03-08');
    expect(text).toMatch(
      /Could be taken by LW-2 \(hatch \d+ Mar, room for 2\) and OC-1 \(orange-cheeked waxbill, hatch \d+ Mar, room for \d\)\.$/,
    );
  });

  it('names no pair that is parted, or that has lost a parent itself', () => {
    const apart = `${neighbour('LW-2', 'lavender waxbill', 2)}\n  - {date: 2026-03-06, parted: {cock: cage 3}}`;
    const room = { ...files('date: 2026-03-08, died: hen'), 'LW-2': apart };
    expect(line(room, 'parent-lost', '2026-03-08').text).toContain(
      'No pair in this room is at that stage and has room.',
    );
  });
});

// Orange-cheeked waxbills stop brooding by night on the third day (Watchbird); most others at 7–12 d, from memory.
describe('a parent lost with chicks', () => {
  it('that were heard only counts none of them', () => {
    const begging = waxbills(
      `${eggs}\n date: 2026-03-17, heard: begging\n date: 2026-03-18, died: hen`,
      heads,
    );
    const { text } = line({ 'LW-1': begging }, 'parent-lost', '2026-03-18');
    expect(text).toContain('with 3 eggs and young (not counted) in the nest.');
    expect(line({ 'LW-1': begging }, 'live-food-missing', '2026-03-18').text).toMatch(
      /^Young \(not counted\) in the nest/,
    );
  });

  it('that were heard only are them, though a single egg was there', () => {
    const one =
      'date: 2026-03-01, laid: 1, sitting: hen\n date: 2026-03-13, heard\n date: 2026-03-14, died: hen';
    const { text } = line({ 'LW-1': waxbills(one, heads) }, 'parent-lost', '2026-03-14');
    expect(text).toContain('with young (not counted) in the nest');
    expect(text).toContain('unwarmed they last hours');
  });

  it('counts eggs and chicks together before it says them or it', () => {
    const text = (laid: number) => {
      const log = `date: 2026-03-01, laid: ${laid}\n date: 2026-03-13, hatched: 1\n date: 2026-03-14, died: hen`;
      return line({ 'LW-1': waxbills(log, heads) }, 'parent-lost', '2026-03-14').text;
    };
    expect(text(1)).toMatch(/with 1 chick in the nest\. .* unwarmed it lasts hours\./);
    expect(text(3)).toMatch(/with 2 eggs and 1 chick in the nest\. .* unwarmed they last hours\./);
  });

  // King quail walk off as they hatch and feed themselves; they need a hen or a brooder to keep warm (common practice).
  it('that run as they hatch want a brooder, and no other pair', () => {
    const quail = (id: string) =>
      pair(
        id,
        'king quail',
        'date: 2026-03-01, laid: 3\n date: 2026-03-02, sitting: hen\n date: 2026-03-18, hatched: 3',
        `cock: ${id}-01\nhen: ${id}-11`,
      );
    const room = { 'KQ-1': `${quail('KQ-1')}\n  - {date: 2026-03-20, died: hen}`, 'KQ-2': quail('KQ-2') };
    const { level, text, check } = line(room, 'parent-lost', '2026-03-20');
    expect(level).toBe('act');
    expect(text).toBe(
      'The hen KQ-1-11 died on 20 Mar, with 3 chicks to keep warm. Nobody wrote yet whether the cock goes on alone; unwarmed they last hours.',
    );
    expect(check).toMatch(
      /^now: are they warm, and does the other parent brood them\? If not, a brooder at once, with a warm place and a cooler one beside it\./,
    );
  });

  const chicks = `${eggs}\n date: 2026-03-16, hatched: 3`;
  const rear = (more: string) => ({ 'LW-1': waxbills(`${chicks}\n${more}`, heads) });

  it('presses while they still need warmth by night', () => {
    const { level, text } = line(rear('date: 2026-03-19, died: hen'), 'parent-lost', '2026-03-19');
    expect(level).toBe('act');
    expect(text).toContain('with 1 egg and 3 chicks in the nest');
  });

  it.each([
    ['the other was seen feeding them all', '20, feeding: {cock: all}', 'watch'],
    ['their crops were full', '20, crops: {full: all}', 'watch'],
    [
      'one is fed by the other, the others have full crops',
      '20, feeding: {cock: c1}, crops: {full: [c2, c3]}',
      'watch',
    ],
    ['the other was seen feeding one of them', '20, feeding: {cock: c1}', 'act'],
    ['their crops were thin', '20, crops: {thin: all}', 'act'],
    ['a line says that the dead one fed them', '20, feeding: {hen: all}', 'act'],
    [
      'one was fed then and the others later',
      '20, feeding: {cock: c1}\n date: 2026-03-20, crops: {full: [c2, c3]}',
      'watch',
    ],
    [
      'the other fed on the very day, which may have been before',
      '19, feeding: {cock: all}, crops: {full: all}',
      'act',
    ],
  ])('where %s', (_what, then, level) => {
    const clear = 'date: 2026-03-18, lost: {clear: e4}';
    const room = rear(`${clear}\n date: 2026-03-19, died: hen\n date: 2026-03-${then}`);
    expect(line(room, 'parent-lost', '2026-03-20')).toMatchObject({ level });
    expect(line(room, 'parent-lost', '2026-03-20').text).toContain('with 3 chicks in the nest');
  });

  it('whose mate was seen feeding all that were there does not press anew when another hatches or is counted', () => {
    const goesOn = 'date: 2026-03-19, died: hen\n date: 2026-03-20, feeding: {cock: all}';
    const level = (more: string) => line(rear(`${goesOn}\n ${more}`), 'parent-lost', '2026-03-21').level;
    expect(level('date: 2026-03-21, hatched: 1')).toBe('watch');
    expect(level('date: 2026-03-21, checked: {chicks: 4}')).toBe('watch');
    expect(level('date: 2026-03-21, hatched: 1, crops: {empty: c4}')).toBe('watch');
  });

  it('whose mate was seen feeding some of those there presses on, whoever hatches', () => {
    const some = 'date: 2026-03-19, died: hen\n date: 2026-03-20, feeding: {cock: [c1, c2]}';
    const room = rear(`${some}\n date: 2026-03-21, hatched: 1`);
    expect(line(room, 'parent-lost', '2026-03-21').level).toBe('act');
  });

  it('presses where one was there at the last feeding and was not among those seen fed', () => {
    const died = 'date: 2026-03-19, died: hen';
    const level = (more: string) => line(rear(`${died}\n ${more}`), 'parent-lost', '2026-03-22').level;
    expect(level('date: 2026-03-20, hatched: 1, feeding: {cock: [c1, c2, c3]}')).toBe('act');
    const all = 'date: 2026-03-20, feeding: {cock: all}\n date: 2026-03-21, hatched: 1';
    expect(level(all)).toBe('watch');
    expect(level(`${all}\n date: 2026-03-22, feeding: {cock: c2}`)).toBe('act');
  });

  it('whose mate goes on does not press anew for a chick that was brought to it since', () => {
    const goesOn = 'date: 2026-03-19, died: hen\n date: 2026-03-20, feeding: {cock: all}';
    const room = {
      ...rear(goesOn),
      'LW-2': pair('LW-2', 'lavender waxbill', `${chicks}\n date: 2026-03-21, fostered: {LW-1: c1}`),
    };
    expect(line(room, 'parent-lost', '2026-03-21').level).toBe('watch');
  });

  it('of feathered young is a matter of who feeds them', () => {
    const room = rear('date: 2026-03-18, lost: {clear: e4}\n date: 2026-03-28, died: hen');
    expect(warned(room, 'parent-lost', '2026-03-28')).toEqual([]);
    expect(warned(room, 'feeder-away', '2026-03-28')).toHaveLength(1);
  });
});

it('a hen taken away from her eggs is missed as if she were dead, whichever word says it', () => {
  for (const taken of ['parted: {hen: cage 4}', 'moved: {hen: cage 4}']) {
    const room = files(`date: 2026-03-08, ${taken}`);
    expect(line(room, 'parent-lost', '2026-03-08')).toMatchObject({
      level: 'act',
      text: expect.stringContaining('The hen LW-20-11 was taken away on 8 Mar'),
    });
  }
  const cock = files('date: 2026-03-08, parted: {cock: cage 4}');
  expect(warned(cock, 'parent-lost', '2026-03-08')).toEqual([]);
});
