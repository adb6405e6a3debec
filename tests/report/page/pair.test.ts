import { describe, expect, it } from 'vitest';
import { pairJson } from '../../../src/report/json/pair.ts';
import { pairPage } from '../../../src/report/page/pair.tsx';
import { dateSpan } from '../../../src/report/terminal/dates.ts';
import { pairStory } from '../../../src/rules/season/story.ts';
import { brokenWords, cutOnPaper, describeInChromium, isEasyToRead } from '../../browser.ts';
import { exampleStory } from '../../example/stories.ts';
import { day, room } from '../../rooms.ts';
import { story, waxbills } from '../seasons.ts';
import { flowing } from './flowing.ts';

const nothing = { notes: [], pictures: [] };
const uri = 'data:image/gif;base64,R0lGODlhAQABAIAAAAAAAP///yH5BAAAAAAALAAAAAABAAEAAAIBRAA7';

describe('a pair’s page', () => {
  it('puts notes beside the clutch in whose time they were written', () => {
    const page = pairPage(story('LW-1'), {
      ...nothing,
      notes: [
        { day: day('2026-02-20'), text: 'broom in' },
        { day: day('2026-03-12'), text: 'tight' },
        { day: day('2026-05-12'), text: 'laid by noon' },
      ],
    });
    const order = [
      'Notes from before the first clutch',
      'broom in',
      'Clutch 1',
      'tight',
      'Clutch 2',
      'laid by noon',
    ];
    const places = order.map((words) => page.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  it('shows photos with day and note, and a line for those that cannot be shown', () => {
    const page = pairPage(story('LW-1'), {
      ...nothing,
      pictures: [
        { day: day('2026-03-12'), note: 'the <b>nest</b>', path: 'a.gif', uri },
        { day: day('2026-03-13'), note: null, path: '../x.png', missing: 'not found' },
      ],
    });
    expect(page).toContain(`src="${uri}"`);
    expect(page).toMatch(/alt="The pair LW-1, its nest or its young, 12 March 2026: the &lt;b>nest&lt;\/b>"/);
    expect(page).toContain('13 March 2026: a photo that cannot be shown (../x.png: not found)');
  });

  it('tells of no young as fed that have fed themselves for months, whoever did not write so', () => {
    const flown =
      'date: 2026-03-01, laid: 2, sitting\n date: 2026-03-16, hatched: 2\n date: 2026-04-03, fledged: all';
    const told = (on: string) => flowing(pairPage(story('LW-1', { 'LW-1': waxbills(flown) }, on), nothing));
    expect(told('2026-04-10')).toContain('fledged 3 Apr · being fed');
    expect(told('2026-09-01')).toContain('fledged 3 Apr · no end written');
  });

  it('of a pair without a clutch is still a page', () => {
    const empty = room({ 'LW-1': 'pair: LW-1\nlog: []\n' }, '2026-05-17');
    const [pair] = empty.pairs;
    if (pair === undefined) throw new Error('no pair');
    expect(pairPage(pairStory(empty, pair), nothing)).toContain('No clutch yet.');
  });

  it('names whom it cares for of other pairs, though it has no clutch', () => {
    const files = {
      'LW-1':
        'pair: LW-1\nlog:\n  - {date: 2026-05-01, laid: 1}\n  - {date: 2026-05-02, fostered: {LW-2: e1}}\n',
      'LW-2': 'pair: LW-2\nlog: []\n',
    };
    expect(flowing(pairPage(story('LW-2', files, '2026-05-17'), nothing))).toContain(
      'No clutch yet. In its care from other pairs: LW-1/1/e1.',
    );
  });
});

describeInChromium('the page of the example room’s LW-1', (open) => {
  const told = exampleStory('LW-1');
  const data = JSON.parse(pairJson(told));
  const page = pairPage(told, {
    notes: [{ day: day('2026-05-12'), text: 'x'.repeat(10_000) }],
    pictures: [{ day: day('2026-03-12'), note: null, path: 'a.gif', uri }],
  });

  it('has the dates, fates and rates of the data', async () => {
    const { page: opened, complaints, requests } = await open(page);
    const sections = opened.locator('section', { has: opened.locator('.outcome') });
    expect(await sections.count()).toBe(data.clutches.length);
    const iso = (span: { from: string; to: string }, from: string) =>
      dateSpan(day(span.from), day(span.to), day(from));
    for (const [index, clutch] of data.clutches.entries()) {
      const text = (await sections.nth(index).allInnerTexts()).join('\n');
      for (const key of ['laid', 'hatched', 'fledged', 'independent']) {
        if (clutch[key] !== null) expect(text).toContain(iso(clutch[key], clutch.laid.from));
      }
      const fates = await sections.nth(index).locator('.fates tbody tr').count();
      expect(fates).toBe(clutch.eggs.length + clutch.chicks.length);
      for (const { ring } of clutch.chicks) if (ring !== null) expect(text).toContain(ring);
    }
    const rates = (
      await opened.locator('section', { hasText: 'Beside the other pairs' }).last().allInnerTexts()
    ).join('\n');
    for (const { k, n } of Object.values<{ k: number; n: number }>(data.own.rates))
      expect(rates).toContain(`${k} of ${n}`);
    for (const { k, n } of Object.values<{ k: number; n: number }>(data.others.rates))
      expect(rates).toContain(`${k} of ${n}`);
    expect([complaints, requests]).toEqual([[], []]);
  });

  isEasyToRead(open, () => page);

  it.each([1000, 800, 600])('breaks no word in the middle, %d px wide', async (width) => {
    const plain = pairPage(told, { notes: [], pictures: [] });
    expect(await brokenWords((await open(plain, { width })).page)).toEqual([]);
    // What fits nowhere is broken all the same.
    expect(await brokenWords((await open(page, { width })).page)).toEqual(['x'.repeat(10_000)]);
  });

  it('is cut nowhere on paper', async () => {
    const { page: opened } = await open(page);
    expect(await cutOnPaper(opened)).toEqual([]);
  });
});
