import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonParts, jsonText } from '../../../src/report/json/text.ts';
import { whole } from '../../whole.ts';
import { FORBIDDEN, hostileText } from '../hostile.ts';

test('hostile text comes through unchanged and reaches no terminal', () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      const printed = jsonText({ [text]: text });
      expect(printed).not.toMatch(FORBIDDEN);
      expect(JSON.parse(printed)).toEqual({ [text]: text });
    }),
  );
});

test('characters beyond the first plane are escaped as two units, as RFC 8259 (section 7) has them', () => {
  expect(jsonText('\u{E0041}')).toBe('"\\udb40\\udc41"\n');
});

test('a long list is written a part at a time, and nothing shows where one was begun', () => {
  const trap = '\n  "rows": []';
  for (const length of [0, 1, 1000, 1001, 2001]) {
    const rows = Array.from({ length }, (_, number) => ({ number, note: trap }));
    const about = { [trap]: trap, inside: { rows: [] }, rows: [], behind: 1 };
    const parts = [...jsonParts(about, 'rows', rows)];
    expect(whole(parts)).toBe(jsonText({ ...about, rows }));
    expect(parts.length).toBe(Math.ceil(length / 1000) + 1);
  }
});

test('ordinary letters of any script stay as they are', () => {
  expect(jsonText('Käfig 巣箱 🐤')).toBe('"Käfig 巣箱 🐤"\n');
});
