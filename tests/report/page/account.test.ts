import { expect, it } from 'vitest';
import { accountMarkdown } from '../../../src/report/account/markdown.ts';
import { accountPage } from '../../../src/report/page/account.tsx';
import { accountOf } from '../../../src/rules/account/account.ts';
import { discretionOf } from '../../../src/rules/discretion/discretion.ts';
import { cutOnPaper, describeInChromium, isEasyToRead } from '../../browser.ts';
import { exampleRecord, exampleRoom } from '../../example/room.ts';
import { exampleStory } from '../../example/stories.ts';
import { told } from '../account/accounts.ts';

const account = accountOf(exampleRoom(), exampleRecord().pairs, exampleStory('LW-1'), {
  discreet: discretionOf(exampleRecord(), exampleRoom(), new Set(['notes'])),
  told: new Set(['notes']),
});
const page = accountPage(account, []);

it('the example pair’s account names none of its birds, rings or flights', () => {
  for (const output of [page, accountMarkdown(account, [])]) {
    expect(output).not.toMatch(/LW.?\d|flight \d|long shed|a breeder two valleys away/i);
    expect(output).toContain('she did not come off for the evening seed');
  }
});

it('whatever was written is shown, and none of it runs', () => {
  const nasty = '<script>alert(1)</script>\r\n=HYPERLINK("http://x.invalid") \u202E';
  const output = accountPage(told({ note: nasty, site: nasty, food: nasty, cause: nasty }), []);
  expect(output).not.toMatch(/<script|\u202E/);
  expect(output.match(/&lt;script>alert/g)?.length).toBeGreaterThanOrEqual(4);
});

describeInChromium('an account as a page', (open) => {
  it('says the same words and figures as in Markdown', async () => {
    const { page: opened, complaints, requests } = await open(page);
    const words = (text: string) => text.replace(/[^\p{L}\p{N}%]+/gu, ' ').trim();
    const shown = words((await opened.locator('main').allInnerTexts()).join('\n'));
    for (const line of accountMarkdown(account, []).split('\n')) expect(shown).toContain(words(line));
    expect([complaints, requests]).toEqual([[], []]);
  });

  isEasyToRead(open, () => page);

  it('is cut nowhere on paper, also with endless words', async () => {
    const long = 'x'.repeat(10_000);
    for (const html of [page, accountPage(told({ note: long, site: long, food: long, cause: long }), [])]) {
      const { page: opened } = await open(html);
      expect(await cutOnPaper(opened)).toEqual([]);
    }
  });
});
