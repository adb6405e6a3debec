import { describe, expect, it } from 'vitest';
import { closeKin } from '../../../src/rules/warnings/close-kin.ts';
import { viewOf } from '../../../src/rules/warnings/warning.ts';
import { type Files, room } from '../../rooms.ts';

const birds = `
  birds:
    - {id: U, sex: cock, sire: G, dam: D}
    - {id: F, sex: cock, sire: G, dam: D}
    - {id: niece, sex: hen, sire: F, dam: M}
    - {id: girl, sex: hen, sire: Z, dam: sister}
    - {id: sister, sex: hen, sire: G, dam: D}
    - {id: stranger, sex: hen}
`;

const warned = (hen: string, on: string, { log = '- {date: 2026-03-01, paired}', limit = '' } = {}) => {
  const files: Files = {
    'birds.yaml': birds,
    'nestlog.yaml': limit === '' ? '' : `limits: {max-inbreeding: ${limit}}`,
    'LW-1': `pair: LW-1\ncock: U\nhen: ${hen}\nlog:\n  ${log}\n`,
  };
  return closeKin.find(viewOf(room(files, on), []));
};

describe('a new pair of close kin', () => {
  it('is told with what they are, and as a note where the room has no limit', () => {
    const [found] = warned('niece', '2026-03-02');
    expect(found).toMatchObject({ level: 'note', pair: 'LW-1', kin: 'uncle and niece', inbreeding: 1 / 8 });
    if (found === undefined) return;
    const { text, check } = closeKin.say(found);
    expect(text).toContain(
      'U and niece, put together on 1 Mar, are uncle and niece: their young would have an F of 0.125.',
    );
    expect(check).toContain('before the first egg');
  });

  it('is something to look at where it is beyond the room’s own limit', () => {
    const [found] = warned('girl', '2026-03-02', { limit: '0.05' });
    expect(found).toMatchObject({ level: 'watch', kin: 'uncle and niece', limit: 0.05 });
  });

  it('is nothing within the limit, or more distant than half brother and sister without one', () => {
    expect(warned('niece', '2026-03-02', { limit: '0.125' })).toEqual([]);
    expect(warned('stranger', '2026-03-02')).toEqual([]);
    expect(warned('stranger', '2026-03-02', { limit: '0' })).toEqual([]);
  });

  it('is told for 30 days, and no longer once they are parted', () => {
    expect(warned('niece', '2026-03-31')).toHaveLength(1);
    expect(warned('niece', '2026-04-01')).toEqual([]);
    const log = '- {date: 2026-03-01, paired}\n  - {date: 2026-03-03, parted}';
    expect(warned('niece', '2026-03-04', { log })).toEqual([]);
  });
});
