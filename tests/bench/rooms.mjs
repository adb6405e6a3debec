/** Rooms of any size for measurements: invented pairs that breed well, each day of each year the same at every run. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const SPECIES = ['lavender waxbill', 'zebra finch', 'gouldian finch', 'star finch'];

/** What is written of one clutch that does well, with the days since its first egg. */
const clutch = [
  [0, 'clutch: N, laid: 1'],
  [1, 'laid: 1'],
  [2, 'laid: 1'],
  [3, 'laid: 1, sitting: hen'],
  [9, 'candled: {fertile: [e1, e2, e4], clear: e3}'],
  [16, 'hatched: [e1, e2]'],
  [17, 'hatched: e4, crops: {full: [c1, c2]}'],
  [19, 'lost: {clear: e3}, checked: {chicks: 3}'],
  [24, 'ringed: {c1: P-N-1, c2: P-N-2, c3: P-N-3}'],
  [37, 'fledged: [c1, c2]'],
  [38, 'fledged: c3, note: "all three back in the nest at dusk"'],
  [57, 'independent: all'],
];
/** Days from one clutch of a pair to its next. */
const CYCLE = 91;
const DAY = 86_400_000;

/** Quiet days, in turn. */
const quiet = ['checked', 'food: [egg food, seed]', 'checked, note: "quiet"', 'courting, time: 07:30'];

/** @param {number} day */
const iso = (day) => new Date(day * DAY).toISOString().slice(0, 10);

/**
 * One pair's journal, one entry a line.
 * @param {number} number
 * @param {{ years: number, quietDays: number, last: number }} size `quietDays`: further entries a clutch; `last`: the
 *   day on which the last entry stands
 */
function journal(number, { years, quietDays, last }) {
  const lines = [
    `pair: RO-${number}`,
    `species: ${SPECIES[number % SPECIES.length]}`,
    `cock: RO-19-${number}`,
    `hen: RO-20-${number}`,
    `housing: flight ${1 + (number % 12)}`,
    'log:',
  ];
  const begin = last - 4 * years * CYCLE + ((number * 7) % 80);
  for (let n = 1; n <= 4 * years; n += 1) {
    const start = begin + (n - 1) * CYCLE;
    /** @type {[number, string][]} */
    const days = clutch.map(([after, saw]) => [start + Number(after), String(saw)]);
    for (let i = 0; i < quietDays; i += 1) {
      days.push([start + 4 + 2 * i, String(quiet[(i + number) % quiet.length])]);
    }
    days.sort((a, b) => a[0] - b[0]);
    for (const [day, saw] of days) {
      if (day <= last) {
        const said = saw.replace(/\bN\b/g, String(n)).replace(/\bP\b/g, String(number));
        lines.push(`  - {date: ${iso(day)}, ${said}}`);
      }
    }
  }
  return `${lines.join('\n')}\n`;
}

/**
 * Writes a room.
 * @param {string} folder
 * @param {{ pairs: number, years: number, quietDays?: number, date: string }} size `date`: the day on which it is alive
 * @returns {{ entries: number, bytes: number, files: string[] }}
 */
export function writeRoom(folder, { pairs, years, quietDays = 0, date }) {
  const last = Math.round(Date.parse(date) / DAY);
  const files = [];
  mkdirSync(join(folder, 'pairs'), { recursive: true });
  writeFileSync(join(folder, 'nestlog.yaml'), 'room: the measured room\n');
  const birds = [];
  let entries = 0;
  let bytes = 0;
  for (let number = 1; number <= pairs; number += 1) {
    const parents = number > 20 ? `, sire: RO-19-${number - 20}, dam: RO-20-${number - 10}` : '';
    birds.push(`  - {id: RO-19-${number}, sex: cock${parents}}`, `  - {id: RO-20-${number}, sex: hen}`);
    const text = journal(number, { years, quietDays, last });
    const file = join(folder, 'pairs', `ro-${number}.yaml`);
    writeFileSync(file, text);
    files.push(file);
    bytes += text.length;
    entries += text.split('\n').length - 7;
  }
  writeFileSync(join(folder, 'birds.yaml'), `birds:\n${birds.join('\n')}\n`);
  return { entries, bytes, files };
}
