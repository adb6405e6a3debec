import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { room } from '../rooms.ts';
import { clutchIn, waxbills } from './facts.ts';

const journal = (...log: string[]) => waxbills(log.join('\n'));

function told(files: Record<string, string>): { eggs: number; said: string[][] } {
  const known = room(files, '2026-04-01');
  return {
    eggs: clutchIn(known, 'LW-1/1').eggs.length,
    said: known.findings.map((finding) => [finding.at.file, kindOf(finding).hint(finding.args) ?? '']),
  };
}

describe('of two journals of one pair', () => {
  it('the one named after it counts, whatever a copy that syncing left is called', () => {
    const { eggs, said } = told({
      'LW-1 (conflicted copy)': journal('date: 2026-03-01, laid: 1', 'date: 2026-03-03, laid: 1'),
      'LW-1': journal('date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1', 'date: 2026-03-04, laid: 1'),
    });
    expect(eggs).toBe(3);
    expect(said).toEqual([
      [
        'pairs/LW-1 (conflicted copy).yaml',
        'if it is a copy, its line 5 is not there yet: put what is missing into pairs/LW-1.yaml, and remove it; if it is another pair, give it its own id, such as `pair: LW-1-b`',
      ],
    ]);
  });

  it.each(['z LW-1', 'LW-11', 'LW', '1', 'l w 1'])(
    'the one named after it counts, though the one in %s.yaml goes on longer',
    (copy) => {
      const { eggs, said } = told({
        'LW-1': journal('date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1'),
        [copy]: journal('date: 2026-03-03, laid: 1'),
      });
      expect([eggs, said.map(([file]) => file)]).toEqual([2, [`pairs/${copy}.yaml`]]);
    },
  );

  it.each(['lw-1', 'Lw 1', 'lw_1', 'LW–1', 'lw1'])(
    'one in %s.yaml is named after it too: then the longer one counts',
    (name) => {
      const { eggs } = told({
        'old/LW-1': journal('date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1'),
        [name]: journal('date: 2026-03-03, laid: 1'),
      });
      expect(eggs).toBe(1);
    },
  );

  it('an accent makes no other name of it, whichever way the machine writes it', () => {
    const named = (pair: string, day: string) =>
      `pair: ${pair}\nspecies: lavender waxbill\nlog:\n  - {date: ${day}, laid: 1}`;
    const known = room(
      { 'old/Zoé': named('Zoé', '2026-03-01'), ['Zoé'.normalize('NFD')]: named('Zoé', '2026-03-03') },
      '2026-04-01',
    );
    expect(known.findings.map(({ code, at }) => [code, at.file])).toEqual([
      ['pair-twice', 'pairs/old/Zoé.yaml'],
    ]);
  });

  it('of which neither is named after it, or both, the one that goes on longest counts', () => {
    const { eggs, said } = told({
      '2025/LW-1': journal('date: 2026-03-01, laid: 1'),
      '2026/LW-1': journal('date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1'),
    });
    expect(eggs).toBe(2);
    expect(said).toEqual([
      [
        'pairs/2025/LW-1.yaml',
        'all its entries stand there too: if it is a copy, remove it; if it is another pair, give it its own id, such as `pair: LW-1-b`',
      ],
    ]);
  });

  it('the lines that are missing are named up to eight', () => {
    const days = Array.from({ length: 12 }, (_, day) => `date: 2026-03-${10 + day}, sitting: hen`);
    const [[, fix] = []] = told({
      a: journal('date: 2026-03-01, laid: 1', ...days),
      'LW-1': journal('date: 2026-03-01, laid: 1'),
    }).said;
    expect(fix).toContain('lines 5, 6, 7, 8, 9, 10, 11, 12 and 4 more are not there yet');
  });
});
