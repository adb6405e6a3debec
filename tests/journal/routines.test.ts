import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/journal/record.ts';
import { plain } from './reading.ts';

function routines(...items: string[]) {
  const { says, findings } = readFile(
    'nestlog.yaml',
    `routines:\n${items.map((item) => `  - ${item}\n`).join('')}`,
  );
  return { routines: JSON.parse(plain(says.settings?.routines)), codes: findings.map(({ code }) => code) };
}

describe('a routine', () => {
  it('counts from something that happened, or from when it was last done', () => {
    const read = routines(
      '{name: calcium, after: paired, days: 3, every: 2, until: laid, say: calcium in the egg food}',
      '{name: worm flights, every: 90}',
    );
    expect(read).toEqual({
      routines: [
        {
          name: { text: 'calcium' },
          after: 'paired',
          days: 3,
          every: 2,
          until: 'laid',
          say: 'calcium in the egg food',
        },
        { name: { text: 'worm flights' }, after: null, days: 0, every: 90, until: null, say: 'worm flights' },
      ],
      codes: [],
    });
  });

  it.each([
    ['{name: calcium}', 'not-a-routine'],
    ['{after: paired}', 'not-a-routine'],
    ['calcium', 'not-a-routine'],
    ['*calcium', 'yaml-feature'],
    ['{name: calcium, after: pairing}', 'unknown-word'],
    ['{name: calcium, every: day}', 'not-whole'],
    ['{name: calcium, evry: 2, after: laid}', 'unknown-key'],
  ])('%s is one finding', (item, code) => {
    expect(routines(item, '{name: other, every: 1}')).toMatchObject({ codes: [code] });
  });

  it.each([
    'after: arrived, until: hatched',
    'after: hatched, until: arrived',
    'after: paired, until: paired',
    'every: 90, until: laid',
  ])('%s would never end: it stands without its end, and that is said', (words) => {
    const read = routines(`{name: x, ${words}}`);
    expect(read).toMatchObject({ routines: [{ until: null }], codes: ['routine-never-ends'] });
  });

  it.each(['independent', 'paired'])('of a bird that arrived lasts until it is %s', (until) => {
    expect(routines(`{name: x, after: arrived, until: ${until}}`)).toMatchObject({
      routines: [{ until }],
      codes: [],
    });
  });

  it('that cannot be read leaves the others', () => {
    expect(routines('{name: x', '{name: other, every: 1}').routines).toHaveLength(1);
  });
});
