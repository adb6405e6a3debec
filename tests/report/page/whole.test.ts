import { expect, it } from 'vitest';
import { birdPage } from '../../../src/report/page/bird.tsx';
import { documentText } from '../../../src/report/page/document.tsx';
import { duePage } from '../../../src/report/page/due.tsx';
import { pairPage } from '../../../src/report/page/pair.tsx';
import { codesWhole } from '../../../src/report/page/whole.tsx';
import { brokenCodes, cutOnPaper, describeInChromium } from '../../browser.ts';
import { exampleMorning } from '../../example/pages.ts';
import { examplePortrait, exampleStory } from '../../example/stories.ts';

it('sets codes and days apart, and leaves other words, attributes, drawings and titles as they are', () => {
  const words = 'LW-24-01, of orange-cheeked parents, see SF-2/1/c3 (2026-05-17)';
  expect(codesWhole(`<p title="LW-1">${words}</p>`)).toBe(
    '<p title="LW-1"><span class="whole">LW-24-01</span>, of orange-cheeked parents, see ' +
      '<span class="whole">SF-2/1/c3</span> (<span class="whole">2026-05-17</span>)</p>',
  );
  const drawing = '<title>LW-1</title><svg aria-label="a > b"><text>LW-1</text></svg>';
  expect(codesWhole(drawing)).toBe(drawing);
  expect(codesWhole('<img alt="a > LW-1"/>')).toBe('<img alt="a > LW-1"/>');
});

it('a word that is longer than any ring is broken where its line ends', () => {
  const ring = `LW-${'7'.repeat(37)}`;
  expect(codesWhole(ring)).toBe(`<span class="whole">${ring}</span>`);
  expect(codesWhole(`${ring}7`)).toBe(`${ring}7`);
});

describeInChromium('on a phone', (open) => {
  it.each([360, 390])('no code is broken at its hyphen, %i px wide', async (width) => {
    const { portrait, stock } = examplePortrait('SF-25-14');
    for (const html of [birdPage(portrait, stock, []), pairPage(exampleStory('LW-2'), nothing)]) {
      const { page } = await open(html, { width });
      await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
      expect(await brokenCodes(page)).toEqual([]);
    }
  });

  it('nor is a ring at its blanks, where a table has a column for rings', async () => {
    const { portrait, stock } = examplePortrait('SF-25-14');
    const { page } = await open(birdPage(portrait, stock, []), { width: 360 });
    await page.locator('summary').click();
    const ring = page.locator('td', { hasText: 'SF 24 02' });
    expect(await ring.evaluate((cell) => getComputedStyle(cell.firstElementChild ?? cell).whiteSpace)).toBe(
      'nowrap',
    );
  });

  it('what is ticked off is struck through, its codes too', async () => {
    const { page } = await open(duePage(exampleMorning(), 'housing'), { width: 360 });
    const code = page.locator('li:has(.whole)').first();
    await code.locator('input').check();
    const line = (one: string) =>
      code
        .locator(one)
        .first()
        .evaluate((element) => getComputedStyle(element).textDecorationLine);
    expect([await line('.what'), await line('.whole')]).toEqual(['line-through', 'line-through']);
  });

  it('a code that is wider than its line is broken rather than cut', async () => {
    const code = 'W-1'.repeat(13);
    const { page } = await open(documentText({ title: code, children: code }), { width: 360 });
    expect(await brokenCodes(page)).toEqual([code]);
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    expect(await cutOnPaper(page)).toEqual([]);
  });
});

const nothing = { notes: [], pictures: [] };
