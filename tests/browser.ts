import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** Chromium, as Debian installs it, or wherever `NESTLOG_CHROMIUM` says. */
const executablePath = process.env.NESTLOG_CHROMIUM ?? '/usr/bin/chromium';
const found = existsSync(executablePath);
if (!found && process.env.NESTLOG_BROWSER === 'required') throw new Error(`no Chromium at ${executablePath}`);

/** A page, what the browser complained about, and every request that left it. */
export interface Opened {
  page: Page;
  complaints: string[];
  requests: string[];
}

interface OpenOptions {
  scheme?: 'light' | 'dark';
  width?: number;
  /** Scripts of the page are off, as they are in many mail programs; on for tests that look into the page. */
  scripts?: boolean;
}

/** Opens a page in the browser. */
type Open = (html: string, options?: OpenOptions) => Promise<Opened>;

/** Tests of pages in a real browser; skipped, by that name, where there is none. */
export function describeInChromium(name: string, tests: (open: Open) => void): void {
  describe.skipIf(!found)(found ? name : `${name} (needs Chromium, skipped)`, () => {
    let browser: Browser;
    let folder: string;
    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), 'nestlog-page-'));
      browser = await chromium.launch({ executablePath, args: LAUNCH });
    });
    afterAll(async () => {
      await browser?.close();
      rmSync(folder, { recursive: true, force: true });
    });
    tests(async (html, { scheme = 'light', width = 1000, scripts = true } = {}) => {
      const file = join(folder, 'page.html');
      writeFileSync(file, html);
      const context = await browser.newContext({
        colorScheme: scheme,
        viewport: { width, height: 1200 },
        javaScriptEnabled: scripts,
        // What tests ask of the page is no script of the page; the page's own policy would forbid it.
        bypassCSP: scripts,
      });
      const page = await context.newPage();
      const complaints: string[] = [];
      const requests: string[] = [];
      page.on('console', (message) => complaints.push(message.text()));
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('request', (request) => requests.push(request.url()));
      const url = pathToFileURL(file).href;
      await page.goto(url);
      return {
        page,
        complaints,
        requests: requests.filter((request) => request !== url && !request.startsWith('data:')),
      };
    });
  });
}

const LAUNCH = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A page can be read with all that axe-core asks, by day and by night and on a phone, where nothing runs off the side. */
export function isEasyToRead(open: Open, html: () => string, prepare = async (_page: Page) => {}): void {
  it.each([
    ['light', 1000],
    ['dark', 1000],
    ['light', 390],
  ] as const)('is easy to read, %s, %d px wide', async (scheme, width) => {
    const { page } = await open(html(), { scheme, width });
    await prepare(page);
    expect(await violations(page)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  });
}

/** Words of a page that are broken between two of their letters, at this width. */
export function brokenWords(page: Page): Promise<string[]> {
  return broken(page, /[\p{L}\p{N}]+/gu);
}

/** Codes of a page, `LW-24-01` or `2026-05-17`, that stand in more than one line, at this width. */
export function brokenCodes(page: Page): Promise<string[]> {
  return broken(page, /[\p{L}\p{N}/-]*\d[\p{L}\p{N}/-]*/gu);
}

function broken(page: Page, words: RegExp): Promise<string[]> {
  return page.evaluate((words) => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const broken: string[] = [];
    while (walker.nextNode()) {
      const { data } = walker.currentNode as Text;
      for (const word of data.matchAll(words)) {
        const range = document.createRange();
        range.setStart(walker.currentNode, word.index);
        range.setEnd(walker.currentNode, word.index + word[0].length);
        const tops = Array.from(range.getClientRects())
          .filter(({ width }) => width > 0.5)
          .map(({ top }) => Math.round(top));
        if (new Set(tops).size > 1) broken.push(word[0]);
      }
    }
    return broken;
  }, words);
}

interface Violation {
  id: string;
  impact: string;
  help: string;
  targets: string[];
}

/** What axe-core finds against WCAG 2.2 A and AA, and its best practices, in a page. */
export async function violations(page: Page): Promise<Violation[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    // @ts-expect-error axe is put into the page by the line above
    const { violations } = await globalThis.axe.run();
    // biome-ignore lint/suspicious/noExplicitAny: axe-core's own result
    return violations.map(({ id, impact, help, nodes }: any) => ({
      id,
      impact,
      help,
      // biome-ignore lint/suspicious/noExplicitAny: axe-core's own result
      targets: nodes.map((node: any) => node.target.join(' ')),
    }));
  });
}

/** Elements that are wider than the sheet, by what they are; printed, they would be cut. */
export async function cutOnPaper(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: A4_WITHIN_MARGINS, height: 1200 });
  return page.evaluate((width) => {
    // @ts-expect-error runs in the page
    return [...document.querySelectorAll('main *')]
      .filter((element) => {
        const box = element instanceof SVGElement ? null : element.getBoundingClientRect();
        return box !== null && box.right > width + 1;
      })
      .map((element) => `${element.tagName} ${element.textContent?.slice(0, 40)}`);
  }, A4_WITHIN_MARGINS);
}

/** 210 mm less two margins of 14 mm, in CSS pixels of 1/96 inch. */
const A4_WITHIN_MARGINS = Math.floor(((210 - 28) / 25.4) * 96);
