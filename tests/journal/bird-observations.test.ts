import { describe, expect, it } from 'vitest';
import { birdObservations } from '../../src/journal/bird-observations/index.ts';
import { observations } from '../../src/journal/observations/index.ts';
import { readFile } from '../../src/journal/record.ts';
import { plain } from './reading.ts';

function bird(said: string) {
  const { says, findings } = readFile(
    'birds.yaml',
    `birds:\n  - id: LW-1\n    log:\n      - {date: 2026-03-01, ${said}}\n`,
  );
  return { saw: says.birds?.[0]?.log[0]?.saw ?? [], codes: findings.map(({ code }) => code) };
}

describe('what is seen of a bird', () => {
  it.each(Object.entries(birdObservations))('%s reads its own example', (key, { example }) => {
    const { saw, codes } = bird(example);
    expect(codes).toEqual([]);
    expect(saw.map((observation) => observation.key)).toEqual([key]);
  });

  it.each([
    ['arrived', null],
    ['arrived: cage 4', { text: 'cage 4' }],
    ['quarantine: 30', { days: 30, until: null }],
    ['quarantine: {until: 2026-03-31}', { days: null, until: 20543 }],
    ['released', null],
    ['weighed: 8.4', 8.4],
    ['moult: done', 'done'],
    ['died', null],
    ['gone: lent', 'lent'],
    ['back', null],
    ['photo: [a.jpg, b.jpg]', [{ text: 'a.jpg' }, { text: 'b.jpg' }]],
  ])('%s', (said, expected) => {
    expect(JSON.parse(plain(bird(said).saw[0]?.value))).toEqual(expected);
  });

  it.each([
    ['quarantine: soon', 'not-a-number'],
    ['quarantine: {until: 2026-02-30}', 'impossible-date'],
    ['weighed: {LW-1: 8}', 'wrong-value'],
    ['gone: stolen', 'unknown-word'],
    ['back: maybe', 'wrong-value'],
    ['laid: 1', 'unknown-key'],
    ['clutch: 1, back', 'unknown-key'],
  ])('%s is refused as %s', (said, code) => {
    expect(bird(said).codes).toEqual([code]);
  });

  it('comes in the order of its life within a day', () => {
    const day = 'arrived back quarantine released weighed unwell treated moult sexed moved died gone photo';
    const orders = day.split(' ').map((key) => birdObservations[key as keyof typeof birdObservations].order);
    expect(orders).toEqual([...orders].sort((a, b) => a - b));
    expect(new Set(orders).size).toBe(orders.length);
  });

  it.each(['weighed', 'treated', 'unwell', 'moult', 'sexed', 'died', 'gone'] as const)(
    '%s has the same place in the day as in the journal of its pair',
    (key) => {
      expect(birdObservations[key].order).toBe(observations[key].order);
    },
  );
});
