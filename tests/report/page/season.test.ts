import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { seasonJson } from '../../../src/report/json/season.ts';
import { courseOf, foldsOf } from '../../../src/report/page/season/lanes.ts';
import { seasonPage } from '../../../src/report/page/season.tsx';
import type { Room } from '../../../src/room/fold.ts';
import type { GroupingName } from '../../../src/rules/season/groupings.ts';
import { seasonBook } from '../../../src/rules/season/season.ts';
import { parseSeasons } from '../../../src/rules/season/seasons.ts';
import { clutchStories } from '../../../src/rules/season/story.ts';
import { cutOnPaper, describeInChromium, isEasyToRead, violations } from '../../browser.ts';
import { exampleRoom } from '../../example/room.ts';
import { type Files, room } from '../../rooms.ts';
import { whole } from '../../whole.ts';
import { FOUR, known, ON, pair, waxbills } from '../seasons.ts';

/** The page of a season, and what programs get of it. */
function season(of: Room, seasons = 'all', by: GroupingName | null = null) {
  const book = seasonBook(of, { seasons: parseSeasons(seasons), by });
  const stories = [...clutchStories(of, book.totals.clutches)];
  return { html: seasonPage(book, stories), data: JSON.parse(whole(seasonJson(book, stories))) };
}

const pageOf = (files: Files, on = ON, by: GroupingName | null = null) =>
  season(room(files, on), 'all', by).html;
const headings = (html: string) => [...html.matchAll(/<h2[^>]*>(.*?)<\/h2>/g)].map((match) => match[1]);

describe('the page of a season', () => {
  it('tells the season, then its parts from the egg on', () => {
    const html = pageOf(known);
    expect(html).toContain('<h1>All seasons</h1>');
    expect(headings(html)).toEqual([
      'From egg to independent',
      'Rates',
      'Chicks by age',
      'Losses',
      'All clutches on the calendar',
      'Clutches by stage',
      'Pairs in order',
      'Pair by pair',
      'What each rate counts',
    ]);
  });

  it('is divided by what was asked for', () => {
    expect(headings(pageOf(known, ON, 'month'))).toContain('By month of the first egg');
  });

  it('has a sentence where there is no curve, nothing to put in order and nothing lost', () => {
    const html = pageOf({ 'LW-1': waxbills(FOUR) }, '2026-03-06');
    expect(html).toContain('No chick was followed from a known day of hatching.');
    expect(html).toContain('Nothing was lost.');
    expect(headings(html)).not.toContain('Pairs in order');
  });

  it('of a room without a clutch says so, and draws nothing', () => {
    const html = pageOf({}, '2026-07-01');
    expect(html).toContain('No journal of this room has a clutch yet.');
    expect(html).not.toMatch(/<table|<svg/);
  });

  it('never prints a number that is none', () => {
    for (const log of ['date: 2026-03-01, laid: 1', 'date: 2026-03-01, heard', FOUR]) {
      expect(pageOf({ 'LW-1': waxbills(log) }, '2026-03-20')).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });
});

describe('lanes', () => {
  it('are drawn from the data’s own days', () => {
    const { data } = season(room(known, ON));
    const [first] = data.timeline;
    expect(courseOf(first)).toMatchObject({ hatched: { from: 20528, to: 20528 }, begun: 20513 });
  });

  it('are folded by species and pairs where there are many, never one pair in two', () => {
    const many = Array.from({ length: 200 }, (_, i) => ({
      pair: `P-${Math.floor(i / 3)}`,
      species: i % 2 === 0 && i < 3 ? 'zebra finch' : 'star finch',
    }));
    const folds = foldsOf(many);
    expect(folds.flatMap(({ members }) => members)).toHaveLength(many.length);
    expect(folds.map(({ title }) => title)).toEqual([
      'star finch: P-0 to P-13',
      'star finch: P-14 to P-26',
      'star finch: P-27 to P-39',
      'star finch: P-40 to P-52',
      'star finch: P-53 to P-65',
      'star finch: P-66',
      'zebra finch',
    ]);
    for (const { members } of folds) expect(members.length).toBeLessThanOrEqual(40);
    expect(foldsOf(many.slice(0, 80))).toHaveLength(1);
  });
});

/** Each table of a page as its cells, by the heading above it. */
async function tablesIn(page: Page): Promise<Record<string, string[][]>> {
  await openAll(page);
  return page.evaluate(() => {
    const tables: Record<string, string[][]> = {};
    // @ts-expect-error runs in the page
    for (const table of document.querySelectorAll('table')) {
      const title = table.closest('section').querySelector('h2').textContent;
      const rows = [...table.querySelectorAll('tbody tr')].map((row) =>
        // biome-ignore lint/suspicious/noExplicitAny: elements of the page
        [...row.children].map((cell: any) => cell.textContent.trim().replace(/\s+/g, ' ')),
      );
      const before = tables[title] ?? [];
      tables[title] = [...before, ...rows];
    }
    return tables;
  });
}

async function openAll(page: Page): Promise<void> {
  await page.evaluate("document.querySelectorAll('details').forEach((one) => one.setAttribute('open', ''))");
}

const percent = (share: number | null) => {
  if (share === null) return '–';
  const text = `${Math.round(share * 100)} %`;
  return text === '100 %' && share < 1 ? '>99 %' : text === '0 %' && share > 0 ? '<1 %' : text;
};
const range = (low: number | null, high: number | null) =>
  low === null || high === null ? '–' : `${Math.round(low * 100)}–${Math.round(high * 100)} %`;
const short = (value: number) => String(Number(value.toFixed(1)));

describeInChromium('the example room’s season', (open) => {
  const example = exampleRoom();

  it.each(['2025', '2026', 'all'])('%s has no figure that programs do not get', async (asked) => {
    const { html, data } = season(example, asked, 'housing');
    const { page } = await open(html);
    const tables = await tablesIn(page);
    const { totals, outside, before, ranking, timeline } = data;
    // biome-ignore lint/suspicious/noExplicitAny: data as programs read it
    type Any = any;
    expect(tables['From egg to independent']?.map(([, n]) => Number(n))).toEqual([
      totals.eggs.laid,
      totals.eggs.fertile,
      totals.eggs.hatched,
      totals.chicks.fledged,
      totals.chicks.independent,
    ]);
    expect(tables.Rates?.map(([, ...cells]) => cells)).toEqual(
      Object.entries(totals.rates).map(([name, { k, n, rate, low, high, open }]: Any) => [
        `${k} of ${n}`,
        percent(rate),
        range(low, high),
        '',
        String(open),
        String(outside[name]),
      ]),
    );
    expect(tables['Chicks by age']).toEqual(
      totals.survival.map(({ age, died, atRisk, surviving, low, high }: Any) => [
        String(age),
        short(died),
        short(atRisk),
        percent(surviving),
        range(low, high),
      ]),
    );
    expect(Object.fromEntries(tables.Losses?.map(([cause, n]) => [cause, Number(n)]) ?? [])).toEqual(
      Object.fromEntries(
        Object.entries({ ...totals.eggs.lost, ...totals.chicks.died }).map(([cause, n]) => [
          cause === 'unknown' ? 'cause not known' : cause,
          n,
        ]),
      ),
    );
    expect(
      tables['Clutches by stage']?.map(([, days, lost, , through, limits]) => [days, lost, through, limits]),
    ).toEqual(
      totals.stages.map(({ exposure, losses, period, low, high }: Any) => [
        short(exposure),
        String(losses),
        percent(period),
        range(low, high),
      ]),
    );
    const SHOWN = ['fertility', 'hatchOfFertile', 'fledge', 'overall'];
    const counts = ({ clutches, rates }: Any) =>
      clutches > 0 || SHOWN.some((measure) => rates[measure].n > 0);
    const groupRows = (groups: Any[], name: string) =>
      groups.filter(counts).map((one) => [
        one[name] ?? 'not written down',
        String(one.clutches),
        String(one.eggs.laid),
        ...SHOWN.map((measure) => {
          const { k, n, rate, open } = one.rates[measure];
          return rate === null ? (open > 0 ? 'open' : '–') : `${percent(rate)} ${k}/${n}`;
        }),
        '',
      ]);
    expect(tables.Species).toEqual(groupRows(data.bySpecies, 'species'));
    expect(tables['By housing']).toEqual(groupRows(data.by.groups, 'group'));
    expect(tables['Season by season'] ?? []).toEqual(groupRows(data.bySeason, 'season'));
    const beside = Object.entries(tables).find(([title]) => title.includes(' beside '))?.[1] ?? [];
    expect(beside.map(([, own, others]) => [own, others])).toEqual(
      (before?.differences ?? []).map(({ own, others }: Any) => [percent(own), percent(others)]),
    );
    expect(tables['Pairs in order']).toEqual(
      ranking.pairs.map(({ pair, k, n, expected, low, high }: Any) => [
        pair,
        `${k} of ${n}`,
        percent(expected),
        range(low, high),
        '',
      ]),
    );
    const lanes = tables['All clutches on the calendar']?.filter((cells) => cells.length === 6) ?? [];
    expect(lanes.map(([, number, , ...of]) => [number, ...of].join(' ')).sort()).toEqual(
      timeline
        .map(({ clutch, of }: Any) => `${clutch} ${of.eggs ?? '?'} ${of.hatched} ${of.independent}`)
        .sort(),
    );
  });

  it('has a panel for each pair, with its own counts', async () => {
    const { html, data } = season(example, '2025');
    const { page } = await open(html);
    const panels = await page.locator('.panel').allInnerTexts();
    expect(panels).toHaveLength(data.byPair.length);
    panels.forEach((text, i) => {
      const { pair, eggs, chicks, rates } = data.byPair[i];
      expect(text.split('\n')[0]).toContain(pair);
      expect(text.match(/^\d+$/gm)?.map(Number)).toEqual([
        eggs.laid,
        eggs.hatched,
        chicks.fledged,
        chicks.independent,
      ]);
      if (rates.overall.rate !== null)
        expect(text).toContain(`${rates.overall.k} of ${rates.overall.n} eggs`);
    });
  });

  it('has every number of its text from the data, or from a scale', async () => {
    const { html, data } = season(example, 'all', 'housing');
    const { page } = await open(html);
    await openAll(page);
    const known = new Set([
      '0',
      '19',
      '20',
      '25',
      '50',
      '75',
      '95',
      '99',
      '100',
      ...ticks(data.followed.untilAge),
    ]);
    const collect = (value: unknown): void => {
      if (typeof value === 'number') {
        for (const one of [value, Math.abs(value) * 100])
          known.add(String(Math.round(one))).add(one.toFixed(1));
      } else if (typeof value === 'string') {
        for (const digits of value.match(/\d+/g) ?? []) known.add(digits).add(String(Number(digits)));
      } else if (typeof value === 'object' && value !== null) {
        for (const [key, one] of Object.entries(value)) [key, one].forEach(collect);
      }
    };
    collect(data);
    known
      .add(String(data.bySpecies.length))
      .add(String(sum(data.totals.eggs.lost)))
      .add(String(sum(data.totals.chicks.died)));
    const text = (await page.locator('body').allInnerTexts()).join('\n');
    const numbers = text.match(/\d+(?:\.\d+)?/g) ?? [];
    expect(numbers.length).toBeGreaterThan(1000);
    expect(numbers.filter((one) => !known.has(one))).toEqual([]);
  });

  it('needs nothing but itself, and no script', async () => {
    const { page, complaints, requests } = await open(season(example, '2026').html, { scripts: false });
    expect(await page.title()).toBe('Season 2026 · the long shed');
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  isEasyToRead(open, () => season(example, '2026', 'housing').html, openAll);

  it.each([
    ['2025', 6],
    ['all', 7],
  ])('%s fits on %i sheets, nothing cut', async (asked, sheets) => {
    const { page } = await open(season(example, asked).html);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(sheets);
    expect(await cutOnPaper(page)).toEqual([]);
  });
});

function ticks(untilAge: number): string[] {
  return Array.from({ length: untilAge + 1 }, (_, age) => String(age)).filter((age) => Number(age) % 5 === 0);
}

const sum = (causes: Record<string, number>) => Object.values(causes).reduce((all, n) => all + n, 0);

describeInChromium('bad input', (open) => {
  const nasty = `<script>alert(1)</script><img src=x onerror=alert(2)> =HYPERLINK(\\"http://x.invalid\\")\\r\\n👩‍🌾 \\u202Egpj.exe`;
  const shown =
    '<script>alert(1)</script><img src=x onerror=alert(2)> =HYPERLINK("http://x.invalid") 👩‍🌾 <U+202E>gpj.exe';
  const hostile = (words: string) => ({
    'nestlog.yaml': `room: "${words}"\n`,
    'LW-1': `
      pair: "LW 1 <b>"
      species: "${words}"
      housing: "${words}"
      log:
        - {date: 2026-03-01, laid: 4, sitting, note: "${words}"}
        - {date: 2026-03-14, hatched: 3}
        - {date: 2026-03-16, died: {"${words}": 2}}
    `,
    'ZF-1': pair('ZF-1', 'zebra finch', FOUR),
  });

  it('is shown as text, never run', async () => {
    const { page, complaints, requests } = await open(pageOf(hostile(nasty), '2026-07-01', 'housing'));
    expect(await page.textContent('h1')).toBe(`All seasons · ${shown}`);
    const tables = await tablesIn(page);
    expect(tables.Losses?.map(([cause]) => cause)).toContain(shown);
    expect(tables.Species?.map(([name]) => name)).toContain(shown);
    expect(await page.locator('script, img').count()).toBe(0);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  it('of 10,000 characters breaks no page, on a phone or on paper', async () => {
    const { page } = await open(pageOf(hostile('x'.repeat(10_000)), '2026-07-01', 'housing'), { width: 390 });
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    expect(await cutOnPaper(page)).toEqual([]);
  });

  it('is no harm to an empty room', async () => {
    const { page } = await open(pageOf({}, '2026-07-01'));
    expect(await violations(page)).toEqual([]);
  });
});

describeInChromium('500 pairs', (open) => {
  const files = Object.fromEntries(
    Array.from({ length: 500 }, (_, i) => [
      `P-${i}`,
      pair(
        `P-${i}`,
        ['star finch', 'zebra finch', 'diamond dove'][i % 3] ?? '',
        `date: 2026-03-01, laid: 4, sitting\n date: 2026-03-14, hatched: ${1 + (i % 3)}\n date: 2026-05-01, clutch: 2, laid: 3`,
      ),
    ]),
  );

  it('stay legible on one calendar: folded by species and pairs, each with all its lanes', async () => {
    const { page } = await open(pageOf(files, '2026-05-10'));
    const folds = page.locator('details.fold:has(.timeline)');
    expect(await folds.count()).toBeGreaterThanOrEqual(1000 / 40);
    await openAll(page);
    expect(await page.locator('.timeline tbody tr').count()).toBe(1000);
    const lane = await page.locator('.timeline tbody tr').last().boundingBox();
    expect(lane?.height).toBeGreaterThanOrEqual(20);
    expect(await cutOnPaper(page)).toEqual([]);
  });

  it('are printed as a few sheets unless groups are opened', async () => {
    const { page } = await open(pageOf(files, '2026-05-10'));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBeLessThan(10);
  });
});
