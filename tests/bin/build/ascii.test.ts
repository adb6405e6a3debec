import { expect, it } from 'vitest';
import { inAscii } from '../../../bin/build/ascii.mjs';

it('writes an expression with signs of other alphabets in ASCII, and it means the same', () => {
  const written = inAscii(String.raw`/^[-−–]\s*\d+\s*[x×]\s*[１-９🪺]$/u`);
  expect(written).toMatch(/^[ -~]+$/);
  const read: RegExp = new Function(`return ${written}`)();
  expect(['− 15 × ３', '–15x🪺', '-1×９'].map((text) => read.test(text))).toEqual([true, true, true]);
  expect(['Ã 15 x 3', '-15 Ã 3'].map((text) => read.test(text))).toEqual([false, false]);
});

it('leaves the rest as it is', () => {
  expect(inAscii('const a = "\\u00d7";\n')).toBe('const a = "\\u00d7";\n');
});
