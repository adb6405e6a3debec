import { expect, it } from 'vitest';
import { impurities } from './purity.mjs';

const found = (path: string, text: string) => impurities([{ path, text }]).length;

it('finds a clock anywhere but in cli.ts', () => {
  for (const text of ['Date.now()', 'new Date()', 'new Date(0)', 'DateTime.now()', 'DateTime.local()']) {
    expect(found('src/commands/due.ts', text), text).toBe(1);
    expect(found('src/rules/due.ts', text), text).toBe(1);
    expect(found('src/cli.ts', text), text).toBe(0);
  }
});

it('finds the process below the commands', () => {
  expect(found('src/report/terminal/due.ts', 'const width = process.stdout.columns;')).toBe(1);
  expect(found('src/commands/due.ts', 'const width = process.stdout.columns;')).toBe(0);
  expect(found('src/report/terminal/due.ts', 'const wash = { process: 1 }; wash.process;')).toBe(0);
  expect(found('src/report/terminal/due.ts', 'exit(process); const { env } = process;')).toBe(2);
});

it('finds a throw where a keeper’s text is read, not the word in a text', () => {
  const text = "if (x) throw new Error('no');";
  for (const layer of ['journal', 'room', 'rules']) expect(found(`src/${layer}/a.ts`, text), layer).toBe(1);
  expect(found('src/commands/due.ts', text)).toBe(0);
  expect(found('src/journal/lost.ts', "// throw\nconst cause = 'throw out';")).toBe(0);
});
