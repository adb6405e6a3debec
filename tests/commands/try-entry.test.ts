import { describe, expect, test } from 'vitest';
import { type Request, tryEntry } from '../../src/commands/try-entry.ts';
import { day } from '../rooms.ts';

const JOURNAL = 'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-05-18, laid: 1}\n';

function attempt(words: string[], { on = '2026-06-01', more = '' }: { on?: string; more?: string } = {}) {
  const files = [{ path: 'pairs/LW-1.yaml', text: JOURNAL + more }];
  const request: Request = { id: 'LW-1', words, note: null, day: day(on), today: day('2026-06-01') };
  const trial = tryEntry(files, request);
  return 'refused' in trial ? expect.unreachable(trial.refused) : trial;
}

const tasks = (items: readonly { task: string }[]) => items.map(({ task }) => task);

test('a trial has the plan, what speaks against it, and the text as it would be', () => {
  const { plan, verdict, sources } = attempt(['laid=1'], { on: '2026-05-19' });
  expect(plan.lines).toEqual(['  - {date: 2026-05-19, laid: 1}']);
  expect(verdict).toEqual({ unreadable: [], errors: [], hints: [] });
  expect(sources.get('pairs/LW-1.yaml')).toBe(plan.after);
});

describe('the day stood on', () => {
  test('is the one whose agenda is compared', () => {
    const { changes } = attempt(['sitting'], { on: '2026-05-22', more: '  - {date: 2026-05-19, laid: 2}\n' });
    expect(tasks(changes.gone)).toContain('confirm-sitting');
  });

  test('hides nothing from the check', () => {
    const { verdict } = attempt(['lost.broken=e1'], {
      on: '2026-05-20',
      more: '  - {date: 2026-05-31, hatched: e1}\n',
    });
    expect(verdict.errors.map(({ code }) => code)).toEqual(['impossible']);
  });
});

test('a clutch is pinned only where the number speaks against nothing', () => {
  expect(attempt(['laid=1'], { more: '  - {date: 2026-05-20, lost: all}\n' }).plan.lines[0]).toContain(
    'clutch: 2, laid: 1',
  );
  expect(attempt(['laid=1'], { on: '2026-05-19' }).plan.lines[0]).not.toContain('clutch');
});

test('letters that were lost in reading would be lost in writing', () => {
  const files = [{ path: 'pairs/LW-1.yaml', text: `# \ufffd\n${JOURNAL}` }];
  const request: Request = { id: 'LW-1', words: ['checked'], note: null, day: 0, today: 0 };
  expect(tryEntry(files, request)).toEqual({ refused: expect.stringContaining('UTF-8') });
});
