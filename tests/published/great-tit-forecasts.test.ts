import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatDay, parseDay } from '../../src/days.ts';
import type { Room } from '../../src/room/fold.ts';
import { durationsOfOthers } from '../../src/rules/durations.ts';
import { overdueFrom } from '../../src/rules/forecast/overdue.ts';
import { membersOf, ownDurations } from '../../src/rules/forecast/own-durations.ts';
import { type PastForecast, pastForecasts, trackRecord } from '../../src/rules/forecast/track-record.ts';
import { room } from '../rooms.ts';

/**
 * Great tits in nest boxes, Scotland 2016–2018 (Womack et al., bioRxiv 2022.07.01.498449; data MIT, copyright 2022
 * Pablo Capilla-Lasheras): nests with a dated start of incubation and a real hatching. A wild bird with a spread of
 * its own, so a harder test of the forecasts than a bird room.
 */
interface Nest {
  start: number;
  hatch: number;
  eggs: number;
  hatchlings: number;
}

function readNests(folder: string): Nest[] {
  const text = readFileSync(join(folder, 'nests/greattit_scotland_nests.csv'), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.replaceAll('"', '').split(','))
    .map((cells) => ({
      start: parseDay(cells[4] ?? '') ?? Number.NaN,
      hatch: parseDay(cells[5] ?? '') ?? Number.NaN,
      eggs: Number(cells[6]),
      hatchlings: Number(cells[7]),
    }))
    .filter(({ start, hatch, hatchlings }) => Number.isFinite(start + hatch) && hatchlings > 0)
    .sort((a, b) => a.start - b.start || a.hatch - b.hatch);
}

/** A journal a nest: the clutch complete and sat on from its dated start, the chicks out on their dated day. */
function roomOf(nests: readonly Nest[]): Room {
  const profile =
    'species: great tit\nincubation: 12-15\nfledging: 18-22\nsitting-from: last\nlaying-interval: 1\n';
  const journals = nests.map(({ start, hatch, eggs, hatchlings }, i) => {
    const text = `
pair: GT-${i + 1}
species: great tit
log:
  - {date: ${formatDay(start)}, after: ${formatDay(start - 1)}, clutch: 1, laid: ${Math.max(eggs, hatchlings)}, sitting}
  - {date: ${formatDay(hatch)}, after: ${formatDay(hatch - 1)}, hatched: ${hatchlings}}
`;
    return [`GT-${i + 1}`, text] as const;
  });
  return room({ 'species/great-tit.yaml': profile, ...Object.fromEntries(journals) }, '2019-01-01');
}

const folder = process.env.NESTLOG_REFERENCE;
const title = 'forecasts of wild great tit nests';

describe.skipIf(!folder)(folder ? title : `${title} (skipped: NESTLOG_REFERENCE names no folder)`, () => {
  const nests = folder ? readNests(folder) : [];
  const aviary = folder ? roomOf(nests) : null;
  const past = aviary === null ? [] : pastForecasts(aviary).filter(({ kind }) => kind === 'incubation');
  const meanError = (error: (forecast: PastForecast) => number) =>
    past.reduce((sum, forecast) => sum + Math.abs(error(forecast)), 0) / past.length;
  const startOf = ({ clutch }: PastForecast) => clutch.sittings[0]?.day ?? Number.NaN;

  it('reads 89 nests with the sitting that their source gives: 14.0449 d', () => {
    expect(aviary?.findings).toEqual([]);
    const own = ownDurations(aviary as Room);
    expect(own).toHaveLength(89);
    expect(own.every(({ width }) => width === 0)).toBe(true);
    expect(own.reduce((sum, { days }) => sum + days, 0) / own.length).toBeCloseTo(14.0449, 4);
  });

  it('is no worse than a keeper who always says start + 14', () => {
    const fixed = meanError((forecast) => forecast.happened - startOf(forecast) - 14);
    expect(meanError(({ happened, likely }) => happened - likely)).toBeLessThanOrEqual(fixed);
  });

  it('is nearer than the book alone, whole forecast against what happened (mean CRPS)', () => {
    const record = trackRecord(past);
    expect(record?.crps).toBeLessThan(record?.book.crps ?? 0);
  });

  it('claims as much as it keeps: the share inside the window within two standard errors', () => {
    const record = trackRecord(past);
    const { inside, claimed, n } = record ?? { inside: 0, claimed: 1, n: 1 };
    expect(Math.abs(inside - claimed)).toBeLessThanOrEqual(2 * Math.sqrt((claimed * (1 - claimed)) / n));
  });

  it('calls at most 1 in 100 of the eggs that did hatch overdue', () => {
    const own = ownDurations(aviary as Room);
    let overdue = 0;
    let hatched = 0;
    const others = durationsOfOthers(own);
    for (const one of own) {
      const duration = others(one.clutch)('incubation', one.species, { low: 12, high: 15 });
      const members = membersOf(one);
      const last = members.reduce((a, b) => (b.start.to > a.start.to ? b : a)).start;
      hatched += members.length;
      overdue += members.filter(({ start, end }) => overdueFrom(duration, start, last) < end.to).length;
    }
    expect(hatched).toBe(504);
    expect(overdue / hatched).toBeLessThanOrEqual(0.01);
  });
});
