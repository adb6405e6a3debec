import { describe, expect, it } from 'vitest';
import { run } from '../../../src/commands/feed.ts';
import { feedText } from '../../../src/report/terminal/feed.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { feedPlan } from '../../../src/rules/feed/plan.ts';
import { runCommand } from '../../commands/run.ts';
import { exampleRoom } from '../../example/room.ts';
import { expectGolden } from '../../golden.ts';
import type { Files } from '../../rooms.ts';
import { HATCHED, pairRoom, SITTING, sourcesOf } from '../../rules/feed/rooms.ts';
import { FORBIDDEN, withoutColour } from '../hostile.ts';

const example = feedPlan(sourcesOf(exampleRoom()), 7);

describe.each([80, 120])('at %i columns', (width) => {
  it('the example room’s week hangs on the kitchen wall', () => {
    const page = feedText(example, { width, color: false });
    expectGolden(import.meta.url, `${width}.txt`, page);
    for (const line of page.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
  });
});

it('has the same words with colour', () => {
  const colour = feedText(example, { width: 80, color: true });
  expect(withoutColour(colour)).toBe(feedText(example, { width: 80, color: false }));
});

const page = async (files: Files, on: string, days = 7) => {
  const { text } = await runCommand({ run }, files, { on, options: { days } });
  return text;
};
const oneLine = (text: string) => text.replace(/\s+/g, ' ');

describe('a plan says', () => {
  it('who eats where, when the hatch may be, and what fits the chicks', async () => {
    const text = oneLine(await page(pairRoom('lavender waxbill', SITTING), '2026-03-12'));
    expect(text).toContain(
      'flight 2 · 2 birds feeding themselves LW-1, lavender waxbill (rears on live food)',
    );
    expect(text).toContain('4 eggs may hatch 14–17 Mar (about 2.6 chicks on average)');
    expect(text).toContain('live food up to 4 mm');
  });

  it('that eggs nobody looked at may have hatched, and that there may be more of them', async () => {
    const late = await page(pairRoom('lavender waxbill', SITTING), '2026-03-20');
    expect(oneLine(late)).toContain('4 eggs may have hatched 14–17 Mar (about 2.6 chicks on average)');
    const glimpse = ['date: 2026-03-03, clutch: 1, laid: 2+, sitting'];
    const text = oneLine(await page(pairRoom('lavender waxbill', glimpse), '2026-03-12'));
    expect(text).toContain('at least 2 eggs, not counted, may hatch');
  });

  it('which hours it took where the room says none', async () => {
    const text = oneLine(await page(pairRoom('lavender waxbill', HATCHED), '2026-03-20'));
    expect(text).toContain('7 portions a day: 07:00 09:00 11:00 13:00 15:00 17:00 19:00');
    expect(text).toContain(
      'Not in nestlog.yaml, so taken as usual: 7 portions from lights-on at 07:00 to 19:00',
    );
    const said = {
      'nestlog.yaml': 'feeding: {from: 06:00, to: 20:00, every: 7 h, soak: 12 h, sprout: 24 h}',
    };
    const own = oneLine(await page(pairRoom('lavender waxbill', HATCHED, said), '2026-03-20'));
    expect(own).toContain('3 portions a day: 06:00 13:00 20:00');
    expect(own).not.toContain('Not in nestlog.yaml');
  });

  it('what of the seed should be under way already, and what to do if it is not', async () => {
    const text = oneLine(await page(pairRoom('lavender waxbill', HATCHED), '2026-03-20'));
    expect(text).toMatch(/To be under way already: .* for Fri 20 Mar \(soaked Wed 18 Mar 19:00\)/);
    expect(text).toContain('If it is not, give more egg food and greens on that day.');
  });

  it('what was taken for a species that the book does not have', async () => {
    const text = oneLine(await page(pairRoom('cloud finch', HATCHED), '2026-03-20'));
    expect(text).toContain(
      'cloud finch: the profile does not say all that is needed; taken: incubation 10–25 d, adult-mass 12 g',
    );
    expect(text).toContain('its need of live food is unknown');
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('what was measured, and that the plan follows it', async () => {
    const lines = [...HATCHED, 'date: 2026-03-19, food: {live food: 3}'];
    const text = oneLine(await page(pairRoom('lavender waxbill', lines), '2026-03-20'));
    expect(text).toMatch(/LW-1, measured on 19 Mar: live food 3 g a day where \d g were reckoned/);
    const none = ['date: 2026-03-01, paired, food: {live food: 9}'];
    expect(oneLine(await page(pairRoom('lavender waxbill', none), '2026-03-20'))).toContain(
      'so it changes nothing',
    );
  });

  it('that young fed by hand are a matter for the food’s maker and a vet', async () => {
    const lines = [...HATCHED, 'date: 2026-03-17, fostered: {hand: c1}'];
    const text = oneLine(await page(pairRoom('lavender waxbill', lines), '2026-03-18'));
    expect(text).toContain('1 young bird fed by hand (LW-1/1/c1)');
    expect(text).toContain('an avian vet');
  });

  it('only dry seed where nobody is reared', async () => {
    const text = await page(pairRoom('zebra finch', ['date: 2026-02-20, paired']), '2026-03-01');
    expect(text).not.toContain('LIVE FOOD');
    expect(text).not.toContain('SEED TO SPROUT');
    expect(oneLine(text)).toContain('Nobody to rear, so this only, and what you always add: flight 2 (2).');
  });

  it('in an empty room that there is nobody, and nothing else', async () => {
    expect(await page({}, '2026-03-01')).toBe(
      'Feeding plan · the finch room\nSunday 1 March 2026 to Saturday 7 March 2026\nNobody is here to feed.\n',
    );
  });

  it('that somebody may be missing where the journals cannot be read', async () => {
    const text = oneLine(
      await page(pairRoom('lavender waxbill', [...HATCHED, 'date: 2026-03-16, hatcht: 2']), '2026-03-20'),
    );
    expect(text).toContain('1 error in the journals');
  });

  it('weeks below one another, for a fortnight', async () => {
    const text = await page(pairRoom('lavender waxbill', HATCHED), '2026-03-20', 14);
    expect(text).toMatch(/Fri 20 .* Thu 26\n.*flight 2.*\n +Fri 27 .*Thu 2\n/);
  });
});

it('sends the terminal nothing that a journal smuggles in', async () => {
  const files = {
    'X-1': `pair: X-1\nspecies: "lavender\\e[2J waxbill"\nhousing: "cage\\u202E 1"\nhen: B\nlog:\n  - {date: 2026-03-01, hatched: 2}\n`,
  };
  expect(await page(files, '2026-03-05')).not.toMatch(FORBIDDEN);
});
