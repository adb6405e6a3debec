import { describe, expect, it } from 'vitest';
import { birdJson } from '../../../src/report/json/bird.ts';
import { birdPage } from '../../../src/report/page/bird.tsx';
import { pedigreeLayout } from '../../../src/report/page/pedigree/layout.ts';
import { portraitOf } from '../../../src/rules/stock/portrait.ts';
import { stockOf } from '../../../src/rules/stock/stock.ts';
import { cutOnPaper, describeInChromium, isEasyToRead } from '../../browser.ts';
import { examplePortrait } from '../../example/stories.ts';
import { type Files, room } from '../../rooms.ts';
import { FAMILY_DAY, family } from '../family.ts';

function bird(id: string, files: Files = family, on = FAMILY_DAY) {
  const stock = stockOf(room(files, on));
  const one = stock.birds.find((known) => known.id === id);
  if (one === undefined) throw new Error(`no bird ${id}`);
  return { portrait: portraitOf(one, stock), stock };
}

const pageOf = ({ portrait, stock }: ReturnType<typeof bird>) => birdPage(portrait, stock, []);

/** Five generations: A's parents are full brother and sister, their parents come from outside. */
const deep: Files = {
  'birds.yaml': `
    birds:
      - {id: A, species: star finch, sex: hen, sire: S, dam: D}
      - {id: S, species: star finch, sex: cock, sire: G, dam: M}
      - {id: D, species: star finch, sex: hen, sire: G, dam: M}
      - {id: G, species: star finch, sex: cock, sire: GG, dam: [X, Y]}
      - {id: M, species: star finch, sex: hen}
      - {id: GG, species: star finch, sex: cock, sire: GGG}
      - {id: GGG, species: star finch, sex: cock, sire: GGGG}
  `,
};

describe('a pedigree', () => {
  const layout = () => {
    const { portrait, stock } = bird('A', deep);
    return pedigreeLayout(portrait.one.ancestor, ({ bird: of }) =>
      of === null ? null : (stock.of(of)?.parents ?? null),
    );
  };

  it('goes four generations back, sire above dam', () => {
    const names = (generation: number) =>
      layout()
        .places.filter((place) => place.generation === generation)
        .map(({ ancestor, kin }) => `${kin}: ${ancestor?.id ?? '?'}`);
    expect(names(1)).toEqual(['sire: S', 'dam: D']);
    expect(names(2)).toEqual(['sire’s sire: G', 'sire’s dam: M', 'dam’s sire: G', 'dam’s dam: M']);
    expect(names(4)).toEqual([
      'sire’s sire’s sire’s sire: GGG',
      'sire’s sire’s sire’s dam: ?',
      'dam’s sire’s sire’s sire: GGG',
      'dam’s sire’s sire’s dam: ?',
    ]);
    expect(Math.max(...layout().places.map(({ generation }) => generation))).toBe(4);
  });

  it('counts who stands in it more than once, and tells founders from birds whose parent is in doubt', () => {
    const { places } = layout();
    const of = (id: string) => places.find(({ ancestor }) => ancestor?.id === id);
    expect([of('G')?.times, of('S')?.times, of('M')?.times]).toEqual([2, 1, 2]);
    expect([of('M')?.founder, of('G')?.founder]).toEqual([true, false]);
    expect(places.find(({ kin }) => kin === 'sire’s sire’s dam')?.doubt).toBe('one of X, Y');
  });

  it('has a row for each of its ends, and no two boxes on one place', () => {
    const { places, rows } = layout();
    const ends = places.filter(
      (place) => !places.some((other) => other.kin === (place.kin === '' ? 'sire' : `${place.kin}’s sire`)),
    );
    expect(rows).toBe(ends.length);
    expect(new Set(places.map(({ generation, row }) => `${generation} ${row}`)).size).toBe(places.length);
  });
});

describe('a bird’s page', () => {
  it('says F and whom it comes through, as the data does', () => {
    const { portrait, stock } = bird('A', deep);
    const data = JSON.parse(birdJson(portrait, stock));
    // Wright (1922): the young of full brother and sister of unrelated parents have F = 1/4.
    expect(data.bird.inbreeding).toBe(0.25);
    expect(pageOf({ portrait, stock })).toContain('F 0.25, through');
  });

  it('of a bird nobody knows anything of is still a page', () => {
    expect(pageOf(bird('SF-24-50'))).toContain('sire unknown');
  });

  it('shows what a keeper wrote and runs none of it', () => {
    const nasty = '<script>alert(1)</script>';
    const files: Files = {
      'birds.yaml': `
        birds:
          - {id: A, ring: "${nasty}", species: "${nasty}", sire: "${nasty}x", log: [{date: 2026-01-01, unwell: "${nasty}"}, {date: 2026-02-01, died: "\u202E${nasty}"}]}
      `,
    };
    const page = pageOf(bird('A', files));
    expect(page).not.toMatch(/<script|\u202E/);
    expect(page).toContain('&lt;script>alert(1)&lt;/script>');
  });
});

describeInChromium('the page of a bird', (open) => {
  it('has every ancestor of the data in its table, with ring and F', async () => {
    const known = examplePortrait('SF-25-14');
    const data = JSON.parse(birdJson(known.portrait, known.stock));
    const { page, complaints, requests } = await open(pageOf(known));
    await page.locator('summary').click();
    const text = (await page.locator('table').first().allInnerTexts()).join('\n');
    const check = (
      one: { id: string; ring: string | null; sire: never; dam: never } | null,
      itself: boolean,
    ) => {
      if (one === null) return;
      if (!itself) expect(text).toContain(one.id);
      if (!itself && one.ring !== null) expect(text).toContain(one.ring);
      check(one.sire, false);
      check(one.dam, false);
    };
    check(data.pedigree, true);
    const life = (await page.locator('dl').allInnerTexts()).join('\n');
    for (const { what } of data.life) expect(life).toContain(what);
    expect([complaints, requests]).toEqual([[], []]);
  });

  isEasyToRead(open, () => pageOf(bird('A', deep)));

  it('keeps its words inside their boxes', async () => {
    const long = 'W'.repeat(60);
    const files = {
      'birds.yaml': `birds:\n  - {id: A, species: star finch, sire: ${long}}\n  - {id: ${long}, ring: "${long}", sire: B}\n`,
    };
    const { page } = await open(pageOf(bird('A', files)));
    const over = await page.evaluate(`[...document.querySelectorAll('.pedigree g')].filter((box) => {
      const right = box.querySelector('rect').getBoundingClientRect().right;
      return [...box.querySelectorAll('text')].some((text) => text.getBoundingClientRect().right > right);
    }).map((box) => box.textContent)`);
    expect(over).toEqual([]);
  });

  it('is cut nowhere on paper', async () => {
    const { page } = await open(pageOf(bird('A', deep)));
    expect(await cutOnPaper(page)).toEqual([]);
  });
});
