import { expect, it } from 'vitest';
import { progressLine } from '../../src/cli/progress.ts';

function terminal() {
  const clock = { time: 0 };
  const written: string[] = [];
  const line = progressLine(
    (text) => void written.push(text),
    () => clock.time,
  );
  return { clock, written, line };
}

it('says nothing in the first half second, and then no more than twice a second', () => {
  const { clock, written, line } = terminal();
  for (clock.time = 0; clock.time < 1600; clock.time += 100) line.tell(`at ${clock.time}`);
  expect(written).toEqual([500, 1000, 1500].map((time) => `\r\u001b[Kat ${time}`));
});

it('goes away before anything else is printed, and only where it was shown', () => {
  const { clock, written, line } = terminal();
  line.clear();
  expect(written).toEqual([]);
  clock.time = 600;
  line.tell('reading');
  line.clear();
  line.clear();
  expect(written).toEqual(['\r\u001b[Kreading', '\r\u001b[K']);
});
