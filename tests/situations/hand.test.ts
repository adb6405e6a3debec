import { describe, expect, it } from 'vitest';
import { run as bird } from '../../src/commands/bird.ts';
import { run as feed } from '../../src/commands/feed.ts';
import { run as pair } from '../../src/commands/pair.ts';
import { run as stock } from '../../src/commands/stock.ts';
import { runCommand } from '../commands/run.ts';
import { room } from '../rooms.ts';
import { clutchIn, codes, due, fates, spell, waxbills } from './morning.ts';

describe('a brood hatched in the incubator and fed by hand', () => {
  const files = {
    a: waxbills(`
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1, pulled: all
      date: 2026-03-05, set: {incubator: all}
      date: 2026-03-17, hatched: 2
      date: 2026-03-18, lost: {clear: 1}
      date: 2026-04-05, fledged: 2
      date: 2026-04-20, independent: 2
    `),
  };

  it('fledges and is weaned by count, like any other: no chick is made up', () => {
    const known = room(files, '2026-04-20');
    expect(known.pairs[0]?.clutches).toHaveLength(1);
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 hatched', 'e2 hatched', 'e3 lost (clear)']);
    const { chicks } = clutchIn(known, 'LW-1/1');
    expect(chicks.every(({ fledged, independent }) => fledged !== null && independent !== null)).toBe(true);
    expect(codes(known)).toEqual([]);
  });

  it('asks whether they are fed and feed themselves', () => {
    expect(due(files, '2026-03-18')).toContain('LW-1 first-feed');
    expect(due(files, '2026-04-19')).toContain('LW-1 independent');
  });

  it('has no nest to take down, no hen that stops brooding, no parent to watch', () => {
    for (const task of ['warm-nights', 'nest-down', 'watch-restart'])
      expect(spell(files, task, 'LW-1', '2026-03-17', '2026-05-20'), task).toEqual([]);
  });
});

describe('eggs that the keeper takes in hand', () => {
  it.each(['fostered: {hand: all}', 'set: {incubator: all}', 'pulled: all'])(
    'may break there: %s',
    (taken) => {
      const log = `date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3, sitting
      date: 2026-03-10, ${taken}\ndate: 2026-03-11, lost: {broken: 1}`;
      const known = room({ a: waxbills(log) }, '2026-03-11');
      expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 lost (broken)', 'e2 open', 'e3 open', 'e4 open']);
      expect(codes(known)).toEqual([]);
    },
  );
});

describe('what hatched in an incubator, and what was taken from the nest into the hand', () => {
  const brood = (later: string) => ({
    a: waxbills(`
      date: 2026-03-01, laid: 1
      date: 2026-03-04, laid: 3, sitting
      date: 2026-03-10, set: {incubator: [e1, e2]}
      date: 2026-03-16, hatched: [e1, e2, e3]
      date: 2026-03-20, fostered: {hand: c3}
      ${later}
    `),
  });
  const said = async (
    command: Parameters<typeof runCommand>[0],
    on: string,
    { later = '', who = 'LW-1' } = {},
  ) => {
    const options = { days: 7 };
    const { text } = await runCommand(command, brood(later), { on, arguments: [who], options });
    return text.replace(/\s+/g, ' ');
  };

  it('is alike: no bird that feeds itself', async () => {
    const page = await said({ run: feed }, '2026-03-21');
    expect(page).toContain('3 young birds fed by hand (LW-1/1/c1, LW-1/1/c2, LW-1/1/c3)');
    expect(page).not.toContain('incubator');
  });

  it('is where the morning says that it is', async () => {
    const birds = await runCommand({ run: stock }, brood(''), { on: '2026-03-21', json: true });
    const housing = (JSON.parse(birds.text) as { birds: { id: string; housing: string }[] }).birds
      .filter(({ id }) => id.startsWith('LW-1/'))
      .map((one) => one.housing);
    expect(housing).toEqual(['hand', 'hand', 'hand']);
  });

  it('is in no nest', async () => {
    const page = await said({ run: pair }, '2026-03-21');
    expect(page).toContain(
      'c1 fed by hand · being fed c2 fed by hand · being fed c3 fed by hand · being fed',
    );
  });

  it('has been fed by hand, in its life as in its clutch, long after it fed itself', async () => {
    const later = 'date: 2026-04-04, fledged: all\ndate: 2026-04-25, independent: all, moved: {c1: flight 3}';
    expect(await said({ run: pair }, '2026-05-01', { later })).toContain(
      'c1 fed by hand · fledged 4 Apr · independent 25 Apr',
    );
    expect(await said({ run: bird }, '2026-05-01', { later, who: 'LW-1/1/c1' })).toMatch(
      /16 Mar fed by hand .*25 Apr in flight 3/,
    );
  });

  it('is still fed by hand in another cage', async () => {
    const page = await said({ run: feed }, '2026-03-25', { later: 'date: 2026-03-24, moved: {c1: cage 3}' });
    expect(page).toContain('3 young birds fed by hand');
    expect(page).not.toContain('cage 3');
  });

  it('is no mouth any more, once nobody has written of it for so long that it is unaccounted for', async () => {
    expect(await said({ run: feed }, '2026-07-20')).not.toContain('fed by hand');
  });
});

describe('a chick taken from the nest into the hand', () => {
  const brood = (later: string) =>
    room(
      {
        a: waxbills(`
          date: 2026-03-01, laid: 1
          date: 2026-03-03, laid: 2, sitting
          date: 2026-03-15, hatched: 3
          date: 2026-03-20, fostered: {hand: c1}
          ${later}
        `),
      },
      '2026-04-10',
    );
  const chicks = (later: string) => clutchIn(brood(later), 'LW-1/1').chicks;

  it('is not among those that are counted in the nest', () => {
    expect(chicks('date: 2026-03-25, died: 1').map(({ fate }) => fate?.kind ?? 'here')).toEqual([
      'here',
      'died',
      'here',
    ]);
    const fledged = 'date: 2026-04-04, fledged: 2';
    expect(chicks(fledged).map((one) => one.fledged !== null)).toEqual([false, true, true]);
    expect(chicks('date: 2026-03-25, crops: {full: 2}').map(({ crops }) => crops.length)).toEqual([0, 1, 1]);
    expect(codes(brood(fledged))).toEqual([]);
  });

  it('may be the one that died, or that feeds itself now, where one was counted: it is asked about', () => {
    expect(codes(brood('date: 2026-03-25, died: 1'))).toEqual(['guessed']);
    expect(codes(brood('date: 2026-03-25, died: c2'))).toEqual([]);
    const weaned = (who: string) =>
      brood(`date: 2026-04-04, fledged: all\ndate: 2026-04-10, independent: ${who}`);
    expect(codes(weaned('1'))).toEqual(['guessed']);
    expect(codes(weaned('all'))).toEqual([]);
  });

  it('is counted where more are counted than are in the nest', () => {
    const all = 'date: 2026-04-04, fledged: 3';
    expect(chicks(all).every((one) => one.fledged !== null)).toBe(true);
    expect(codes(brood(all))).toEqual([]);
  });

  it('is brought to its pair again as to any other, and the way is told to whoever writes `back`', () => {
    const home = 'date: 2026-03-24, fostered: {LW-1: c1}';
    expect(codes(brood(home))).toEqual([]);
    expect(chicks(home)[0]?.stays.at(-1)?.nest?.id).toBe('LW-1');
    expect(codes(brood('date: 2026-03-24, back: c1'))).toEqual(['back-from-hand']);
  });
});

describe('“back: 1” without saying who', () => {
  const log = (out: string) => `
    date: 2026-03-01, laid: 1
    date: 2026-03-04, laid: 3, sitting
    date: 2026-03-16, hatched: 3
    date: 2026-03-20, died: {chilled: c1}
    ${out}
  `;

  it('is the one that left the nest, not the one found dead, and nobody needs to be asked', () => {
    const known = room(
      { a: waxbills(log('date: 2026-04-01, fledged: c2\ndate: 2026-04-01, time: 19:00, back: 1')) },
      '2026-04-01',
    );
    const [c1, c2] = clutchIn(known, 'LW-1/1').chicks;
    expect([c1?.fate?.kind, c2?.fledged]).toEqual(['died', null]);
    expect(codes(known)).toEqual([]);
  });
});

describe('a brood fed by hand whose chicks are counted', () => {
  const log = `date: 2026-03-04, laid: 4, sitting\ndate: 2026-03-17, hatched: 3\ndate: 2026-03-20, fostered: {hand: all}\n`;
  const told = (more: string, on = '2026-04-30') => {
    const known = room({ a: waxbills(`${log}${more}`) }, on);
    const { chicks } = clutchIn(known, 'LW-1/1');
    return [
      codes(known),
      chicks.filter(({ fledged }) => fledged !== null).length,
      chicks.filter(({ fate }) => fate !== null).length,
    ];
  };

  it('is meant by the number of its clutch', () => {
    expect(told('date: 2026-04-06, clutch: 1, fledged: 2')).toEqual([[], 2, 0]);
    expect(told('date: 2026-03-22, clutch: 1, died: 1\ndate: 2026-04-06, clutch: 1, fledged: all')).toEqual([
      [],
      2,
      1,
    ]);
  });

  it('is meant by it too where the next clutch is in the nest already, with no other word', () => {
    const next = 'date: 2026-03-28, clutch: 2, laid: 3, sitting\ndate: 2026-04-11, clutch: 2, hatched: 3\n';
    expect(told(`${next}date: 2026-04-12, clutch: 1, fledged: 3`)).toEqual([[], 3, 0]);
    expect(told(`${next}date: 2026-04-12, clutch: 2, died: 1`)).toEqual([[], 0, 0]);
  });

  it('was fed by hand until it came home, and is in the nest then', async () => {
    const home = async (more: string, on: string) => {
      const files = { a: waxbills(`${log}date: 2026-03-24, fostered: {LW-1: all}\n${more}`) };
      const { text } = await runCommand({ run: pair }, files, { on, arguments: ['LW-1'] });
      return text.replace(/\s+/g, ' ');
    };
    expect(await home('', '2026-03-25')).toContain('c1 fed by hand until 24 Mar · in the nest');
    expect(await home('date: 2026-03-26, fostered: {hand: all}', '2026-03-27')).toContain(
      'c1 fed by hand · being fed',
    );
    expect(
      await home('date: 2026-04-06, fledged: all\ndate: 2026-04-28, independent: all', '2026-05-01'),
    ).toContain('c1 fed by hand until 24 Mar · fledged 6 Apr · independent 28 Apr');
  });
});
