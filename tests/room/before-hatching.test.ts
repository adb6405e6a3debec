import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { dedent, room } from '../rooms.ts';
import { waxbills } from './facts.ts';

/** What is said of a bird that is told of before it hatched. */
function told(
  bird: string,
  on = '2026-06-01',
  log = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1, sitting\ndate: 2026-03-15, hatched: 2',
) {
  const known = room({ 'birds.yaml': dedent(bird), 'LW-1': waxbills(log) }, on);
  return known.findings
    .filter(({ code }) => code === 'before-hatching')
    .map((finding) => `${finding.at.line}:${finding.at.column} ${kindOf(finding).text(finding.args)}`);
}

const withLog = (head: string, ...lines: string[]) =>
  `birds:\n  - ${head}\n    log:\n${lines.map((line) => `      - {${line}}\n`).join('')}`;

describe('nothing can be told of a bird before it hatched', () => {
  it('of one from outside, whose day of hatching is in the list', () => {
    const bird = withLog(
      'id: A\n    hatched: 2026-02-10',
      'date: 2026-02-10, weighed: 1',
      'date: 2026-02-09, weighed: 1',
    );
    expect(told(bird)).toEqual([
      '6:16 A had not hatched on 9 Feb 2026: that was on 10 Feb 2026 at the earliest',
    ]);
  });

  it('which a line dated later than the day stood on does not tell yet', () => {
    const bird = withLog('id: A\n    hatched: 2026-02-10', 'date: 2026-02-03, weighed: 1');
    expect([told(bird, '2026-02-02'), told(bird, '2026-02-03').length]).toEqual([[], 1]);
  });

  it('of one of which the year is known alone, before that year', () => {
    const bird = (date: string) => withLog('id: A\n    hatched: 2025', `date: ${date}, arrived`);
    expect(told(bird('2025-01-01'))).toEqual([]);
    expect(told(bird('2024-12-31'))).toHaveLength(1);
  });

  it('of one that was bred here, by the journal of its parents', () => {
    const bird = withLog(
      'id: A\n    is: LW-1/1/c1',
      'date: 2026-03-02, died',
      'date: 2026-03-03, weighed: 1',
    );
    expect(told(bird)).toHaveLength(1);
    // Until it hatched nobody can know.
    expect(told(bird, '2026-03-14')).toEqual([]);
  });

  it('of one that nobody says when it hatched, anything may be told', () => {
    expect(told(withLog('id: A', 'date: 2020-01-01, arrived'))).toEqual([]);
  });
});

it('a chick that its own log has dead before it hatched lies in no nest', () => {
  const bird = withLog('id: A\n    is: LW-1/1/c1', 'date: 2026-03-02, died');
  const log = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1, sitting\ndate: 2026-03-15, hatched: 2';
  const known = room({ 'birds.yaml': bird, 'LW-1': waxbills(log) }, '2026-03-18');
  expect([...(known.pairs[0]?.here.young ?? [])].map(({ ref }) => ref)).toEqual(['c2']);
});
