import { expect, test } from 'vitest';
import { dueJson } from '../../../src/report/json/due.ts';
import { findingData } from '../../../src/report/json/finding.ts';
import { day, item, morning, warning } from '../mornings.ts';

const finding = {
  code: 'negative-count',
  at: { file: 'pairs/lw-1.yaml', line: 3, column: 5, length: 2 },
  args: { text: '-1' },
} as const;

test('a morning for programs has every key, ISO dates, and null for the unknown', () => {
  const forecast = item({
    state: 'coming',
    from: day('2026-05-18'),
    likely: day('2026-05-19'),
    to: null,
    basis: 'book',
  });
  expect(
    JSON.parse(
      dueJson(
        morning({ items: [item({}), forecast], warnings: [warning({ bird: null })], findings: [finding] }),
      ),
    ),
  ).toStrictEqual({
    nestlog: 1,
    date: '2026-05-17',
    room: 'the finch room',
    items: [
      {
        task: 'candle',
        pair: 'LW-1',
        bird: null,
        clutch: 3,
        who: null,
        housing: 'flight 2',
        species: 'lavender waxbill',
        from: '2026-05-17',
        likely: null,
        to: '2026-05-17',
        state: 'now',
        why: 'sitting since 12 May + 5–6 d',
        basis: null,
      },
      {
        task: 'candle',
        pair: 'LW-1',
        bird: null,
        clutch: 3,
        who: null,
        housing: 'flight 2',
        species: 'lavender waxbill',
        from: '2026-05-18',
        likely: '2026-05-19',
        to: null,
        state: 'coming',
        why: 'sitting since 12 May + 5–6 d',
        basis: 'book',
      },
    ],
    warnings: [
      {
        kind: 'overdue',
        level: 'watch',
        pair: 'LW-1',
        bird: null,
        clutch: 3,
        date: '2026-05-17',
        text: 'e4 has been sat on for 17 d; fewer than 1 in 100 such eggs still hatch.',
        check: 'candle e4 away from the nest; leave it if you are not sure.',
      },
    ],
    findings: [findingData(finding)],
  });
});
