import fc from 'fast-check';
import markdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { accountMarkdown, escaped } from '../../../src/report/account/markdown.ts';
import { visible } from '../../../src/report/terminal/visible.ts';
import type { AccountDuration } from '../../../src/rules/account/durations.ts';
import { FORBIDDEN } from '../hostile.ts';
import { told } from './accounts.ts';

/** A reader that takes for markup whatever it can: HTML, tables, bare addresses. */
const reader = markdownIt({ html: true, linkify: true });

type Token = ReturnType<typeof reader.parse>[number];
const flat = (tokens: Token[]): Token[] => tokens.flatMap((token) => [token, ...flat(token.children ?? [])]);

/** What an account may be made of; everything else would come out of a keeper's text. */
const OURS =
  /^(?:heading|paragraph|bullet_list|list_item|table|thead|tbody|tr|th|td)_(?:open|close)$|^(?:inline|text|text_special|softbreak)$/;

const foreign = (markdown: string) =>
  flat(reader.parse(markdown, {})).flatMap(({ type }) => (OURS.test(type) ? [] : [type]));

/** The words of a Markdown text as its reader sees them. */
const words = (markdown: string) =>
  flat(reader.parse(markdown, {}))
    .filter(({ type }) => type === 'text' || type === 'text_special')
    .map(({ content }) => content)
    .join('');

const hostile = [
  '[x](javascript:alert(1))',
  '![x](http://x.invalid/a.png)',
  '<img src=x onerror=alert(1)>',
  '<script>alert(1)</script>',
  'a | b | c',
  '`code` ``more``',
  '# heading',
  '- item',
  '1. item',
  '> quote',
  '***',
  '===',
  '*a* _b_ __c__ ~~d~~',
  '&lt;b&gt; &#x41;',
  'http://x.invalid and www.x.invalid and a@x.invalid',
  '<http://x.invalid>',
  '[a]: http://x.invalid',
  'back\\slash\\',
  '=HYPERLINK("http://x.invalid")',
  'line\nbreak\r\n\r\n# heading\r- item',
  '\u202Egpj.exe \u0007 \u001B[2J',
  '👩‍🌾🐤',
  '$x$ :tada: @somebody #12',
  'x'.repeat(10_000),
];

describe.each(hostile)('%s in a note', (note) => {
  const markdown = accountMarkdown(told({ note, site: note, food: note, cause: note }), []);

  it('is text, and stays what it was', () => {
    expect(foreign(markdown)).toEqual([]);
    expect(words(markdown)).toContain(visible(note).trim().slice(0, 60));
    expect(markdown).not.toMatch(FORBIDDEN);
  });

  it('leaves the account in one piece', () => {
    const tokens = reader.parse(markdown, {});
    expect(tokens.filter(({ type }) => type === 'table_open')).toHaveLength(2);
    expect(tokens.filter(({ type }) => type === 'heading_open').length).toBeGreaterThan(4);
  });
});

it('whatever is written, no markup comes of it and no letter is lost', () => {
  const marks = fc.constantFrom(
    ...'[]()<>!*_`~#|&\\-+.:=/$@{}"\' ab1'.split(''),
    'http://',
    'www.',
    '<a>',
    '&amp;',
  );
  fc.assert(
    fc.property(fc.array(marks, { maxLength: 25 }), (parts) => {
      const text = parts.join('').replace(/\s+/g, ' ').trim();
      const line = `- on a day: ${escaped(text)}`;
      expect(foreign(line)).toEqual([]);
      expect(words(line)).toBe(`on a day: ${text}`.trim());
    }),
    { numRuns: 2000 },
  );
});

it('pictures are told of by their days', () => {
  const shown = { day: 20512, note: null, path: '', uri: 'data:image/png;base64,AA==' };
  expect(accountMarkdown(told({}), [shown, shown])).toMatch(/\n## Photos\n\nTaken on 28 Feb 2026\.\n$/);
});

const tookRow = (duration: Partial<AccountDuration>) => {
  const took = { clutches: 3, unseen: 0, shortest: 12, longest: 13, mean: 12.4, ...duration };
  const account = { ...told({}), durations: [{ kind: 'incubation' as const, ...took }] };
  return /^\| sitting to hatching \| (.*) \|$/m.exec(accountMarkdown(account, []))?.[1];
};

describe('how long sitting took', () => {
  it('is told as known where somebody looked each day', () => {
    expect(tookRow({})).toBe('12–13 | 12.4 | 3 | to the day');
  });

  it('is told as a guess between the looks where nobody did', () => {
    expect(tookRow({ clutches: 1, unseen: 1, shortest: 13, longest: 18, mean: 15.5 })).toBe(
      '13–18 | about 15.5 | 1 | somewhere between, as nobody looked',
    );
    expect(tookRow({ unseen: 1 })).toBe(
      '12–13 | about 12.4 | 3 | 2 to the day, 1 somewhere between, as nobody looked',
    );
  });
});
