/**
 * Great tits in nest boxes, Scotland 2016–2018 (Womack et al., bioRxiv 2022.07.01.498449; data MIT, copyright 2022
 * Pablo Capilla-Lasheras): a table as it was published, made into journals by a mapping. 102 nests; 504 of 696 eggs
 * hatched, 442 of 504 young fledged; sitting to hatching 14.0449 d over the 89 nests in which something hatched.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readRoom } from '../../src/journal/record.ts';
import { seasonJson } from '../../src/report/json/season.ts';
import { understandRoom } from '../../src/room/fold.ts';
import { ownDurations } from '../../src/rules/forecast/own-durations.ts';
import { seasonBook } from '../../src/rules/season/season.ts';
import { parseSeasons } from '../../src/rules/season/seasons.ts';
import { planImport } from '../../src/write/import/plan.ts';
import { day, dedent } from '../rooms.ts';
import { whole } from '../whole.ts';

/**
 * The table knows when the pair began to sit and when it hatched. When the eggs were laid, when those that did not
 * hatch were seen to be lost and when the young flew is counted from these, and the entries say so.
 */
const mapping = dedent(`
  rows: clutches
  pair: <year>-<box>
  species: great tit
  housing: <site>, <area>
  log:
    - {date: <incubation_start> - 1, laid: <clutch>, sitting: off}
    - {date: <incubation_start>, sitting}
    - {date: <hatch>, after: <hatch> - 1, hatched: <hatchlings>}
    - {date: <hatch> + 4, lost: <clutch> - <hatchlings>}
    - {date: <hatch> + 16, died: <hatchlings> - <fledglings>}
    - {date: <hatch> + 21, after: <hatch> + 17, fledged: <fledglings>}
`);

const profile = dedent(`
  species: great tit
  clutch: 5-12
  laying-interval: 1
  sitting-from: last
  incubation: 12-15
  fledging: 18-22
`);

const folder = process.env.NESTLOG_REFERENCE;
const title = 'a published table of great tit nests';

describe.skipIf(!folder)(folder ? title : `${title} (skipped: NESTLOG_REFERENCE names no folder)`, () => {
  const text = folder ? readFileSync(join(folder, 'nests/greattit_scotland_nests.csv'), 'utf8') : '';
  const clock = { day: day('2019-01-01'), today: day('2019-01-01') };
  const species = { path: 'species/great-tit.yaml', text: profile };
  const plan = planImport(
    { name: 'greattit_scotland_nests.csv', text },
    { name: 'great-tit.yaml', text: mapping },
    { existing: [species], into: '', clock, understand: understandRoom },
  );
  const room = understandRoom(readRoom([species, ...plan.journals], clock), clock);
  const clutches = room.pairs.flatMap((pair) => pair.clutches);
  const eggs = clutches.flatMap((clutch) => clutch.eggs);
  const chicks = clutches.flatMap((clutch) => clutch.chicks);

  it('is imported whole', () => {
    expect(plan.problems).toEqual([]);
    expect([plan.rows, plan.journals.length, clutches.length]).toEqual([102, 102, 102]);
    expect(plan.unread).toEqual(['mean_chick_mass_g']);
    expect(room.findings).toEqual([]);
  });

  it('tells that 13 nests have a hatching date but nothing that hatched', () => {
    expect(plan.zeros.get('hatched')).toBe(13);
  });

  it('says in the entries themselves which dates are assumed', () => {
    const lines = plan.journals.flatMap((journal) => journal.text.split('\n'));
    const of = (key: string) => lines.filter((line) => new RegExp(` ${key}: \\d`).test(line));
    for (const key of ['laid', 'lost', 'died', 'fledged']) {
      expect(of(key).length).toBeGreaterThan(10);
      expect(of(key).filter((line) => !line.includes('date assumed: '))).toEqual([]);
    }
    expect(of('hatched').filter((line) => line.includes('date assumed'))).toEqual([]);
    expect(lines.filter((line) => line.endsWith(', sitting}'))).toHaveLength(102);
  });

  it('gives the totals of its source: 504 of 696 hatched, 442 of 504 fledged', () => {
    expect(eggs).toHaveLength(696);
    expect(eggs.filter(({ fate }) => fate?.kind === 'hatched')).toHaveLength(504);
    expect(eggs.filter(({ fate }) => fate === null)).toEqual([]);
    expect(chicks).toHaveLength(504);
    expect(chicks.filter(({ fledged }) => fledged !== null)).toHaveLength(442);
    expect(chicks.filter(({ fledged, fate }) => fledged === null && fate === null)).toEqual([]);
  });

  it('gives a season with the same totals', () => {
    const { totals } = JSON.parse(
      whole(seasonJson(seasonBook(room, { seasons: parseSeasons('all'), by: null }), [])),
    );
    expect(totals.eggs).toMatchObject({ laid: 696, hatched: 504, open: 0 });
    expect(totals.chicks).toMatchObject({ hatched: 504, fledged: 442 });
  });

  it('gives the sitting of its source: 14.0449 d over 89 nests', () => {
    const own = ownDurations(room).filter(({ kind }) => kind === 'incubation');
    expect(own).toHaveLength(89);
    expect(own.reduce((sum, { days }) => sum + days, 0) / own.length).toBeCloseTo(14.0449, 4);
  });
});
