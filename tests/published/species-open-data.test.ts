import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findSpecies } from '../../src/species/find.ts';

/**
 * Rows that a profile leaves out on purpose, one by one, as `scientific name, trait, value: reason`. None at present:
 * every unflagged row lies within a day of its profile.
 */
const exceptions: Record<string, string> = {};

const folder = process.env.NESTLOG_REFERENCE;
const rows = folder === undefined ? [] : unflaggedRows(folder);

interface Row {
  name: string;
  trait: 'incubation' | 'fledging';
  value: number;
  dataset: string;
}

// Amniote database (Myhrvold et al. 2015, Ecology 96:3109), AnAge, European birds (Storchova & Horak 2018, GEB),
// parrot handbook table of Smeele et al. 2022: single facts, read from the reference folder and not kept here.
describe.skipIf(folder === undefined)('shipped profiles against open life-history data', () => {
  test('there is something to compare', () => {
    expect(rows.length).toBeGreaterThan(80);
    expect(new Set(rows.map(({ name }) => findSpecies(name)?.id)).size).toBeGreaterThan(40);
  });

  test.each(rows)('$name: $trait of $value days ($dataset)', ({ name, trait, value }) => {
    const key = `${name}, ${trait}, ${value}`;
    const range = findSpecies(name)?.[trait]?.value;
    const low = (range?.low ?? Number.NaN) - 1;
    const high = (range?.high ?? Number.NaN) + 1;
    if (key in exceptions) expect(value < low || value > high, `${key} needs no exception`).toBe(true);
    else expect(value >= low && value <= high, `${low + 1}-${high - 1} in the profile`).toBe(true);
  });

  test('a species has one profile under all the names that the data use', () => {
    const pairs = readCsv(join(folder ?? '', 'name-map.csv'));
    const known = pairs.filter((pair) => findSpecies(pair.current_name_suggested ?? '') !== null);
    expect(known.length).toBeGreaterThan(25);
    for (const { name_in_dataset: old = '', current_name_suggested: current = '' } of known) {
      expect(findSpecies(old)?.id, old).toBe(findSpecies(current)?.id);
    }
  });
});

if (folder === undefined) {
  test('open data: skipped, because NESTLOG_REFERENCE names no folder', ({ skip }) => {
    skip('set NESTLOG_REFERENCE to the folder of the open data to compare the profiles with them');
  });
}

/** The rows of our species that no one has flagged as looking wrong. */
function unflaggedRows(reference: string): Row[] {
  const identity = (row: Record<string, string>) =>
    [row.scientific_name, row.trait, row.value, row.row_source].join('|');
  const flagged = new Set(readCsv(join(reference, 'open-data-flags-dev.csv')).map(identity));
  const kinds: Record<string, Row['trait']> = { incubation_period: 'incubation', fledging_age: 'fledging' };
  return readCsv(join(reference, 'open-data-dev.csv')).flatMap((row) => {
    const trait = kinds[row.trait ?? ''];
    const name = row.scientific_name ?? '';
    if (trait === undefined || flagged.has(identity(row)) || findSpecies(name) === null) return [];
    return [{ name, trait, value: Number(row.value), dataset: row.dataset ?? '' }];
  });
}

/** A table with quoted cells, one object a row. */
function readCsv(file: string): Record<string, string>[] {
  const lines = readFileSync(file, 'utf8').trim().split(/\r?\n/);
  const cells = (line: string) =>
    [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
      quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'),
    );
  const head = cells(lines[0] ?? '');
  return lines.slice(1).map((line) => {
    const values = cells(line);
    return Object.fromEntries(head.map((name, index) => [name, values[index] ?? '']));
  });
}
