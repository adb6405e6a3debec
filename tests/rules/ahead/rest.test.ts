import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { restAhead } from '../../../src/rules/ahead/rest.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { day, type Files, room } from '../../rooms.ts';

function rest(
  log: readonly string[],
  on: string,
  { until = '2026-12-31', limit = 2, more = {} }: { until?: string; limit?: number; more?: Files } = {},
) {
  const lines = ['{date: 2025-01-01, paired}', ...log].map((line) => `  - ${line}`).join('\n');
  const stood = room(
    {
      'nestlog.yaml': `limits: {clutches-per-year: ${limit}}`,
      'birds.yaml':
        'birds:\n  - {id: ZF-1, species: zebra finch, sex: hen}\n  - {id: ZF-2, species: zebra finch, sex: cock}\n',
      A: `\npair: A\nspecies: zebra finch\ncock: ZF-2\nhen: ZF-1\nhousing: cage 1\nlog:\n${lines}\n`,
      ...more,
    },
    on,
  );
  return restAhead(stood, broodsOf(stood, learnedDurations(stood)), day(until)).map(
    ({ from, free, ...one }) => ({
      ...one,
      from: from === null ? null : formatDay(from),
      free: formatDay(free),
    }),
  );
}

const FIRST = ['{date: 2026-02-01, clutch: 1, laid: 1}', '{date: 2026-02-25, lost: {clear: all}}'];
const SECOND = ['{date: 2026-03-01, clutch: 2, laid: 1}', '{date: 2026-03-04, laid: 3, sitting}'];

describe('a hen will need rest', () => {
  it('from the first fledging of the last clutch that a year allows her, foretold from its eggs', () => {
    const [one, ...others] = rest([...FIRST, ...SECOND], '2026-03-10');
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      pair: 'A',
      hen: 'ZF-1',
      housing: 'cage 1',
      clutches: 2,
      limit: 2,
      free: '2027-02-01',
    });
    // Hatching is foretold from 12 March on, and at the least 17 days in the nest (shipped profile).
    expect(one?.from).toBe('2026-03-29');
  });

  it('from the day on which its chicks are expected to leave the nest, once they have hatched', () => {
    const [one] = rest(
      [...FIRST, ...SECOND, '{date: 2026-03-16, checked: {eggs: 4}}', '{date: 2026-03-17, hatched: 4}'],
      '2026-03-18',
    );
    // The morning foretells it for 4–8 April (17–22 days, shipped profile).
    expect(one?.from).toBe('2026-04-04');
  });

  it('from the first of them where some eggs are in the incubator, whatever other pairs have', () => {
    const set = [...FIRST, ...SECOND, '{date: 2026-03-06, set: {incubator: [e3, e4]}}'];
    const earlier = {
      B: '\npair: B\nspecies: zebra finch\nlog:\n  - {date: 2026-02-20, clutch: 1, laid: 4, sitting}\n',
    };
    const [alone] = rest([...FIRST, ...SECOND], '2026-03-10');
    expect(rest(set, '2026-03-10', { more: earlier })).toMatchObject([{ from: alone?.from }]);
  });

  it('not where by then the oldest of her clutches is a year ago', () => {
    const last = (laid: string) => [
      `{date: ${laid}, clutch: 1, laid: 1}`,
      '{date: 2025-05-25, lost: {clear: all}}',
    ];
    expect(rest([...last('2025-03-31'), ...SECOND], '2026-03-10')).toEqual([]);
    expect(rest([...last('2025-04-01'), ...SECOND], '2026-03-10')).toMatchObject([
      { from: '2026-03-31', free: '2026-04-01' },
    ]);
  });

  it('from the day on which the first did leave the nest', () => {
    const [one] = rest(
      [...FIRST, ...SECOND, '{date: 2026-03-17, hatched: 2}', '{date: 2026-04-05, fledged: 1}'],
      '2026-04-06',
    );
    expect(one?.from).toBe('2026-04-05');
    const all = [...FIRST, ...SECOND, '{date: 2026-03-17, hatched: 2}', '{date: 2026-04-05, fledged: 1}'];
    const [later] = rest([...all, '{date: 2026-04-07, fledged: 1}'], '2026-04-08');
    expect(later?.from).toBe('2026-04-05');
    // She needs it also where all of them were sold since.
    const sold = ['{date: 2026-04-07, fledged: 1}', '{date: 2026-04-20, gone: {sold: all}}'];
    const lost = '{date: 2026-04-01, lost: {clear: all}}';
    expect(rest([...all, ...sold, lost], '2026-04-21')).toMatchObject([{ from: '2026-04-05' }]);
  });

  it('though her last nest was taken down before this one, and while one egg of it is left', () => {
    const before = '{date: 2026-02-26, nest: removed}';
    const [one] = rest(
      [...FIRST, before, ...SECOND, '{date: 2026-03-08, lost: {broken: [e1, e2, e3]}}'],
      '2026-03-10',
    );
    // The last egg is of 4 March: 12 days at the least, and 17 in the nest.
    expect(one?.from).toBe('2026-04-02');
  });

  it('not while a year allows her more, nor where it lies beyond the weeks asked for', () => {
    expect(rest([...FIRST, ...SECOND], '2026-03-10', { limit: 3 })).toEqual([]);
    expect(rest([...FIRST, ...SECOND], '2026-03-10', { until: '2026-03-28' })).toEqual([]);
    expect(rest([...FIRST, ...SECOND], '2026-03-10', { until: '2026-03-29' })).toHaveLength(1);
  });

  it('after the last of three as well, whichever pair she laid it in: of the others nobody waits for it', () => {
    const autumn = ['{date: 2025-09-01, clutch: 1, laid: 1}', '{date: 2025-09-25, lost: {clear: all}}'];
    const later = [...FIRST, ...SECOND].map((line) =>
      line.replace('clutch: 2', 'clutch: 3').replace('clutch: 1', 'clutch: 2'),
    );
    expect(rest([...autumn, ...later], '2026-03-10', { limit: 3 })).toMatchObject([
      { clutches: 3, from: '2026-03-29' },
    ]);
    const second = SECOND.map((line) => `  - ${line.replace('clutch: 2', 'clutch: 1')}\n`).join('');
    const B = `\npair: B\nspecies: zebra finch\nhen: ZF-1\nhousing: cage 1\nlog:\n  - {date: 2026-02-27, paired}\n${second}`;
    expect(rest(FIRST, '2026-03-10', { more: { B } })).toMatchObject([{ pair: 'B', clutches: 2 }]);
  });

  it('not where she is dead, or nobody knows who she is', () => {
    expect(rest([...FIRST, ...SECOND, '{date: 2026-03-09, died: hen}'], '2026-03-10')).toEqual([]);
    const lines = [...FIRST, ...SECOND].map((line) => `  - ${line}\n`).join('');
    const C = `\npair: C\nspecies: zebra finch\nlog:\n${lines}`;
    expect(rest([], '2026-03-10', { more: { C } })).toEqual([]);
  });

  it('not once the pair is parted', () => {
    expect(rest([...FIRST, ...SECOND, '{date: 2026-03-09, parted}'], '2026-03-10')).toEqual([]);
  });

  // The morning says it under the same conditions.
  it('not where the keeper lets it pass, or took the nest once the young had left it', () => {
    const log = [...FIRST, ...SECOND, '{date: 2026-03-17, hatched: 2}', '{date: 2026-04-05, fledged: 1}'];
    expect(rest(log, '2026-04-06')).toHaveLength(1);
    for (const word of ['skip: rest', 'nest: removed'])
      expect(rest([...log, `{date: 2026-04-05, ${word}}`], '2026-04-06'), word).toEqual([]);
    for (const word of ['skip: ring', 'nest: cleaned'])
      expect(rest([...log, `{date: 2026-04-05, ${word}}`], '2026-04-06'), word).toHaveLength(1);
    expect(rest([...log, '{date: 2026-03-18, nest: removed}'], '2026-04-06')).toHaveLength(1);
  });

  it('with no day while nothing can be foretold; not when nobody of the clutch is left to leave the nest', () => {
    const hatched = [...FIRST, ...SECOND, '{date: 2026-03-17, hatched: 4}'];
    expect(rest([...hatched, '{date: 2026-03-20, died: 3}'], '2026-03-21')).toHaveLength(1);
    expect(rest([...hatched, '{date: 2026-03-20, died: 4}'], '2026-03-21')).toEqual([]);
    expect(rest([...FIRST, '{date: 2026-03-01, clutch: 2, laid: 1, pulled: 1}'], '2026-03-01')).toMatchObject(
      [{ from: null }],
    );
  });
});
