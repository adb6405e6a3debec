import { h } from 'preact';
import { expect, test } from 'vitest';
import { documentText, markupOf } from '../../../src/report/page/document.tsx';
import { Figure } from '../../../src/report/page/figure.tsx';
import { Table } from '../../../src/report/page/table.tsx';
import { cutOnPaper, describeInChromium, violations } from '../../browser.ts';

const HOSTILE =
  '<script>alert(1)</script> "quoted" \'and\' <img src=x onerror=alert(2)> =HYPERLINK("http://x.invalid") &amp; 🐦';

const page = (text: string) =>
  documentText({
    title: text,
    children: [
      h('h1', null, text),
      h(Table, { caption: text, head: ['bird', 'g'], right: [1], rows: [[text, '8.4']] }),
      h(
        Figure,
        { title: text, says: text, width: 10, height: 10, table: null, children: null },
        h('text', { x: 0, y: 10 }, text),
      ),
    ],
  });

test('what a keeper wrote is text, in elements and in attributes', () => {
  expect(markupOf(h('p', { title: HOSTILE }, HOSTILE))).not.toMatch(/<script|<img/);
});

test('a table without rows leaves nothing on the page', () => {
  expect(markupOf(h(Table, { caption: 'weights', head: ['bird'], rows: [] }))).toBe('');
});

test('a page is one file without a script or an address to load from', () => {
  const text = page('the finch room');
  expect(text).toMatch(/^<!doctype html>\n<html lang="en">/);
  expect(text).not.toMatch(/<script|<link|\bsrc=|url\(/);
});

describeInChromium('opened in Chromium', (open) => {
  test('markup in a note is shown, and neither runs nor loads anything', async () => {
    const { page: opened, complaints, requests } = await open(page(HOSTILE));
    expect(await opened.textContent('h1')).toBe(HOSTILE);
    expect(await opened.title()).toBe(HOSTILE);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  test.each(['light', 'dark'] as const)('nothing of it is hard to read, %s', async (scheme) => {
    const { page: opened } = await open(page('the finch room'), { scheme });
    expect(await violations(opened)).toEqual([]);
  });

  test('endless words break instead of being cut on paper', async () => {
    const { page: opened } = await open(page('x'.repeat(10_000)));
    expect(await cutOnPaper(opened)).toEqual([]);
  });
});
