import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, days, waxbills } from './facts.ts';
import { chicks, eggs } from './five-eggs.ts';
import { at } from './waxbill-log.ts';

describe('a count', () => {
  it('of the dead takes who is in the nest before who has left it, and nobody died before it left', () => {
    const left = `${chicks}\ndate: 2026-04-04, fledged: 4\n`;
    const ends = (more: string) =>
      clutchIn(room({ P: waxbills(left + more) }, '2026-04-20'), 'LW-1/1').chicks.flatMap(({ ref, fate }) =>
        fate?.kind === 'died' ? [`${ref} ${days(fate.span)}`] : [],
      );
    expect(ends('date: 2026-04-05, died: 1')).toEqual(['c5 03-19…04-05']);
    expect(ends('date: 2026-04-06, died: 2')).toEqual(['c1 04-04…04-06', 'c5 03-19…04-06']);
  });

  it('takes the lowest numbers where all are alike, and nobody needs to be asked', () => {
    const { fates, codes } = eggs('date: 2026-03-18, hatched: 2');
    expect(fates).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 open', 'e5 open']);
    expect(codes).toEqual([]);
  });

  it('of what the lamp shows takes those that showed the same, then those that no lamp has shown yet', () => {
    const shown = (first: string) => {
      const log = `date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-10, candled: ${first}\ndate: 2026-03-12, candled: {clear: 2}`;
      return clutchIn(at(log), 'LW-1/1').eggs.map(({ lamp }) => lamp.at(-1)?.saw ?? '-');
    };
    expect(shown('{fertile: e1}')).toEqual(['fertile', 'clear', 'clear', '-', '-']);
    expect(shown('{fertile: e1, clear: e5}')).toEqual(['fertile', 'clear', '-', '-', 'clear']);
  });

  it('of cocks takes one that is alive', () => {
    const log = `${chicks}\ndate: 2026-03-24, died: c1\ndate: 2026-05-10, sexed: {cock: 1}`;
    expect(clutchIn(at(log), 'LW-1/1').chicks.map(({ sex }) => sex)).toEqual([
      null,
      'cock',
      null,
      null,
      null,
    ]);
  });

  it('of sold takes another than the one that was sold that morning', () => {
    const log = `${chicks}\ndate: 2026-04-06, fledged: all\ndate: 2026-05-01, independent: all
      date: 2026-06-01, time: 08:00, gone: {sold: c1}\ndate: 2026-06-01, time: 12:00, gone: {sold: 1}`;
    expect(clutchIn(at(log), 'LW-1/1').chicks.filter(({ fate }) => fate !== null)).toHaveLength(2);
  });

  it('of hatched takes no clear egg while another is there', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: [e1, e2], fertile: [e3, e4, e5]}\ndate: 2026-03-18, hatched: 3',
    );
    expect(fates).toEqual(['e1 open', 'e2 open', 'e3 hatched', 'e4 hatched', 'e5 hatched']);
  });

  it('of clear eggs takes those that the lamp showed clear', () => {
    const { fates, codes } = eggs(
      'date: 2026-03-11, candled: {clear: e4, fertile: [e1, e2, e3, e5]}\ndate: 2026-03-18, lost: {clear: 1}',
    );
    expect(fates[3]).toBe('e4 lost (clear)');
    expect(codes).toEqual([]);
  });

  it('of eggs dead in shell takes those that had been seen dead, then fertile ones', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: e1, fertile: [e2, e3], dead: e5}\ndate: 2026-03-20, lost: {dead-in-shell: 2}',
    );
    expect(fates).toEqual([
      'e1 open',
      'e2 lost (dead-in-shell)',
      'e3 open',
      'e4 open',
      'e5 lost (dead-in-shell)',
    ]);
  });
});

describe('one found dead on the day on which others were in the hand', () => {
  const brood = 'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: 4';
  const dead = (log: string) =>
    clutchIn(at(`${brood}\n${log}`), 'LW-1/1').chicks.flatMap(({ ref, fate }) =>
      fate?.kind === 'died' ? ref : [],
    );

  it('is none of those that got a ring, were weighed or showed a crop', () => {
    expect(dead('date: 2026-03-25, ringed: {c1: "014", c2: "015", c3: "016"}, died: 1')).toEqual(['c4']);
    expect(dead('date: 2026-03-25, weighed: {c1: 4.1, c2: 4.2}, died: {thrown-out: 1}')).toEqual(['c3']);
    expect(dead('date: 2026-03-25, crops: {full: [c1, c2, c4]}, died: 1')).toEqual(['c3']);
    // Of those that nobody held that day, one with an empty crop the day before is likelier than its sisters.
    expect(dead('date: 2026-03-24, crops: {full: c1, empty: c2}\ndate: 2026-03-25, died: 1')).toEqual(['c2']);
    expect(dead('date: 2026-03-24, weighed: {c1: 4.1}\ndate: 2026-03-25, died: 1')).toEqual(['c1']);
    expect(dead('date: 2026-03-25, ringed: {c1: "014", c2: "015", c3: "016", c4: "017"}, died: 1')).toEqual([
      'c1',
    ]);
  });

  it('lay in the nest rather than that it flew', () => {
    expect(
      dead('date: 2026-04-05, fledged: [c1, c2]\ndate: 2026-04-06, weighed: {c3: 7, c4: 7}, died: 1'),
    ).toEqual(['c3']);
  });
});
