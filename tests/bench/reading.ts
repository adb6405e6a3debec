import { parse } from 'yaml';
import { type Day, formatDay, parseDay } from '../../src/days.ts';
import type { Finding } from '../../src/findings/finding.ts';
import { pairShape, readPairJournal } from '../../src/journal/pair-journal.ts';
import { readTree } from '../../src/journal/text/tree.ts';
import { line, medians } from './measure.mjs';

const RUNS = 11;
const JOURNALS = 200;
const CLUTCHES = 4;

/** What is written of one clutch that does well, with the days since its first egg. */
const clutch: [number, string][] = [
  [0, 'clutch: N, laid: 1'],
  [1, 'laid: 1'],
  [2, 'laid: 1, time: 07:30'],
  [3, 'laid: 1, sitting: hen, note: "hen sat through the night"'],
  [8, 'candled: {fertile: [e1, e2, e4], clear: e3}'],
  [15, 'hatched: [e1, e2]'],
  [16, 'hatched: e4, crops: {full: [c1, c2], thin: c3}'],
  [18, 'lost: {clear: e3}, checked: {eggs: 0, chicks: 3}'],
  [23, 'ringed: {c1: RO-26-01, c2: RO-26-02, c3: RO-26-03}, weighed: {c1: 6.1, c2: 6.0, c3: 5.2}'],
  [35, 'fledged: [c1, c2]'],
  [36, 'fledged: c3, roosting: nest, note: "all three back in the nest at dusk"'],
  [50, 'independent: all'],
];

function journal(number: number): string {
  const start = parseDay('2026-01-05') as Day;
  const log = Array.from({ length: CLUTCHES }, (_, index) =>
    clutch.map(([after, saw]) => {
      const date = formatDay(start + number + index * 70 + after);
      return `  - {date: ${date}, ${saw.replace('N', String(index + 1))}}\n`;
    }),
  );
  const head = `pair: RO-${number}\nspecies: lavender waxbill\ncock: RO-19-${number}\nhen: RO-20-${number}\nlog:\n`;
  return head + log.flat().join('');
}

/** Journal text to typed entries, beside bare YAML of the same text. Gives the lines to print. */
export function measureReading(): string[] {
  const texts = Array.from({ length: JOURNALS }, (_, index) => journal(index + 1));
  const findings: Finding[] = [];
  let entries = 0;
  const read = () => {
    entries = 0;
    for (const [index, text] of texts.entries()) {
      const { root, findings: inText } = readTree(`pairs/RO-${index + 1}.yaml`, text, pairShape);
      findings.push(...inText);
      if (root !== null)
        entries += readPairJournal(`pairs/RO-${index + 1}.yaml`, root, findings).entries.length;
    }
  };
  read();
  if (findings.length > 0 || entries !== JOURNALS * CLUTCHES * clutch.length) {
    const codes = [...new Set(findings.map(({ code }) => code))].join(', ');
    throw new Error(
      `the journals must be read whole for their time to mean anything: ${entries} entries, ${codes}`,
    );
  }
  const times = medians(
    {
      'bare yaml': () => {
        for (const text of texts) parse(text);
      },
      'typed entries': read,
    },
    RUNS,
  );
  const base = times['bare yaml'];
  const rate = Math.round((entries / times['typed entries']) * 1000).toLocaleString('en');
  return [
    line('bare yaml', base, { base }),
    `${line('typed entries', times['typed entries'], { base, limit: 1.15 })}  ${rate} entries/s`,
  ];
}
