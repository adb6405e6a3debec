import { describe, expect, test } from 'vitest';
import { codes, type FindingCode, kindOf } from '../../src/findings/codes.ts';
import type { FindingArgs } from '../../src/findings/finding.ts';

/** Stands for whatever the keeper wrote: every argument is there, and shows up where it is used. */
const args = new Proxy<FindingArgs>({}, { get: (_, name) => `‹${String(name)}›` });

describe.each(Object.keys(codes) as FindingCode[])('%s', (code) => {
  const { level, text, hint } = kindOf({ code });

  test('is an error or a hint, in one line without a full stop', () => {
    expect(['error', 'hint']).toContain(level);
    expect(text(args)).toMatch(/^\S.*[^.\s]$/);
    expect(text(args)).not.toContain('undefined');
  });

  test('says what helps, or nothing at all', () => {
    const help = hint(args);
    if (help === null) return;
    expect(help.trim()).not.toBe('');
    expect(help).not.toContain('undefined');
  });
});

test('each code says something else', () => {
  const texts = Object.values(codes).map(({ text }) => text(args));
  expect(texts.filter((text, index) => texts.indexOf(text) !== index)).toEqual([]);
});
