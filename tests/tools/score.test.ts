import { expect, it } from 'vitest';
import { scoreLine, scoreOf } from './mutants/score.mjs';

const statuses = (...list: string[]) => ({
  files: { 'src/a.ts': { mutants: list.map((status, id) => ({ id: String(id), status })) } },
});

it('counts what was told, by a test that failed or by time, among what was tried', () => {
  const report = statuses('Killed', 'Killed', 'Timeout', 'Survived', 'NoCoverage', 'Ignored');
  expect(scoreLine('src/a', scoreOf(report))).toBe(
    'src/a: 6 mutants, 5 tried, 2 killed, 1 timed out, 1 survived, 1 reached by no test, 1 left out, as they work at loading; score 60.0 %',
  );
});

it('of a sample counts that sample alone, and says how far it may be off', () => {
  const sample = [...Array(8).fill('Killed'), 'Survived', 'NoCoverage'];
  const report = statuses(...sample.flatMap((status) => ['NoCoverage', status, 'RuntimeError']));
  const score = scoreOf(report, 3, 1);
  expect(score).toMatchObject({ mutants: 30, tried: 10, told: 8, killed: 8, noCoverage: 1, failed: 0 });
  expect(scoreLine('src/a', score, { low: 0.49, high: 0.943 })).toMatch(
    /score 80.0 % \(95 %: 49.0 to 94.3 %\)$/,
  );
});

it('of those that work at loading counts nothing else', () => {
  const report = statuses('Killed', 'Survived', 'NoCoverage', 'NoCoverage', 'RuntimeError');
  expect(scoreOf(report, 1, 0, true)).toMatchObject({ tried: 2, told: 1, noCoverage: 0 });
});

it('says so where nothing was tried, and where mutants failed to run', () => {
  expect(scoreLine('src/a', scoreOf(statuses('Ignored')))).toMatch(/; nothing tried$/);
  expect(scoreLine('src/a', scoreOf(statuses('Killed', 'RuntimeError')))).toMatch(
    /, 1 failed to run; score 100.0 %$/,
  );
});
