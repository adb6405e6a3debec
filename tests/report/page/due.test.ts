import { describe, expect, it } from 'vitest';
import { duePage } from '../../../src/report/page/due.tsx';
import { cutOnPaper, describeInChromium, violations } from '../../browser.ts';
import { exampleMorning } from '../../example/pages.ts';
import { record } from '../../rooms.ts';
import { busyMorning, item, morning, warning } from '../mornings.ts';
import { flowing } from './flowing.ts';

const NASTY =
  '<script>alert(1)</script><img src=x onerror=alert(2)> =HYPERLINK("http://x.invalid")\r\n👩‍🌾 \u202Egpj.exe';

describe('a tick list', () => {
  it('says what presses before the walk, and what is only to be known after it', () => {
    const page = duePage(busyMorning(), 'housing');
    const at = ['Before the walk', 'ACT NOW', 'flight 2', 'To know', 'this species rears on live food'].map(
      (words) => page.indexOf(words),
    );
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
  });

  it('goes from housing to housing, from pair to pair, or by what presses', () => {
    const headings = (by: 'housing' | 'pair' | 'urgency') =>
      [...flowing(duePage(twoFlights, by)).matchAll(/<h2>(.*?)<\/h2>/g)].map((match) => match[1]);
    expect(headings('housing')).toEqual(['flight 2', 'flight 10', 'the room']);
    expect(headings('pair')).toEqual([
      'GF-1 · lavender waxbill · flight 10',
      'LW-1 · lavender waxbill · flight 2',
      'the room',
    ]);
    expect(headings('urgency')).toEqual(['Late', 'Today', 'Coming']);
  });

  it('gives each of several nests that ask for the same a box of its own', () => {
    const items = ['LW-1', 'LW-2', 'LW-3'].map((pair) => item({ pair }));
    expect(duePage(morning({ items }), 'housing').match(/type="checkbox"/g)).toHaveLength(3);
  });

  it('shows what a keeper wrote and runs none of it', () => {
    const page = duePage(
      morning({
        room: NASTY,
        items: [item({ housing: NASTY, pair: NASTY, say: NASTY, why: NASTY })],
        warnings: [warning({ text: NASTY })],
      }),
      'housing',
    );
    expect(page).not.toMatch(/<script|<img|\u202E/);
    expect(page).toContain('&lt;script>alert(1)&lt;/script>');
    expect(page).toContain('&lt;U+202E>gpj.exe');
  });

  it('tells of lines that cannot be read, and of hints', () => {
    const { findings } = record(
      { 'LW-1': 'pair: LW-1\nlog:\n  - {date: 2026-02-31, laid: 1}\n  - date: 2026-02-01\n    laid: 1\n' },
      '2026-05-17',
    );
    const page = duePage(morning({ findings }), 'housing');
    expect(page).toContain('1 error in the journals, so something may be missing here:');
    expect(flowing(page)).toContain('pairs/LW-1.yaml:3:12:');
    expect(page).toContain('1 hint on how something is written');
  });

  it('has a kind word for a morning without work', () => {
    expect(duePage(morning(), 'housing')).toContain(
      'A quiet morning: nothing is late and nothing is due today.',
    );
  });
});

const twoFlights = morning({
  items: [
    item({ pair: 'GF-1', housing: 'flight 10' }),
    item({ pair: null, housing: null, species: null, clutch: null, say: 'worm count', state: 'coming' }),
    item({ state: 'late' }),
  ],
});

describeInChromium('the example room’s tick list', (open) => {
  const shown = exampleMorning();

  it('holds every task and warning of the morning, its dates and its reasons', async () => {
    const { page, complaints, requests } = await open(duePage(shown, 'housing'), { scripts: true });
    const rows = await page.locator('.ticks li').allInnerTexts();
    expect(rows).toHaveLength(shown.items.length + shown.warnings.length);
    const said = rows.join('\n').replace(/\s+/g, ' ');
    for (const { say, why, basis, pair, bird } of shown.items) {
      for (const words of [say, why, basis ?? '', pair ?? bird ?? '']) expect(said).toContain(words);
    }
    for (const { text, check } of shown.warnings) {
      expect(said).toContain(text);
      expect(said).toContain(check);
    }
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  it('is ticked with a thumb, without a script', async () => {
    const { page } = await open(duePage(shown, 'housing'), { width: 390, scripts: false });
    const row = page.locator('.ticks label').first();
    await row.click();
    expect(await page.locator('input:checked').count()).toBe(1);
    for (const label of await page.locator('.ticks label').all()) {
      expect((await label.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    }
  });

  it.each(['light', 'dark'] as const)('is easy to read, %s', async (scheme) => {
    const { page } = await open(duePage(shown, 'housing'), { scheme });
    expect(await violations(page)).toEqual([]);
  });

  it('fits on two sheets, nothing cut', async () => {
    const { page } = await open(duePage(shown, 'housing'));
    expect(await cutOnPaper(page)).toEqual([]);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
  });

  it('stays whole with endless and hostile words', async () => {
    const long = 'x'.repeat(10_000);
    const { page, complaints, requests } = await open(
      duePage(
        morning({
          items: [item({ housing: long, pair: NASTY, why: long })],
          warnings: [warning({ text: long })],
        }),
        'housing',
      ),
      { width: 390 },
    );
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    expect(await cutOnPaper(page)).toEqual([]);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });
});
