import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonText } from '../../../src/report/json/text.ts';
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

test('ordinary letters of any script stay as they are', () => {
  expect(jsonText('Käfig 巣箱 🐤')).toBe('"Käfig 巣箱 🐤"\n');
});
