import { nameOfFile } from '../file-names.ts';
import type { Finding } from '../findings/finding.ts';
import { birdObservations } from './bird-observations/index.ts';
import type { Entry, PairJournal } from './entry.ts';
import type { KeyTable } from './grammar/key.ts';
import { housing, ownName, parents, speciesKey } from './grammar/names.ts';
import { word } from './grammar/values.ts';
import type { Vocabulary } from './grammar/vocabulary.ts';
import type { Fields } from './nodes.ts';
import { type Observation, observations } from './observations/index.ts';
import { readKeys } from './read/keys.ts';
import { LogReader, logKey } from './read/log.ts';
import { asOurs } from './read/spelling.ts';
import type { VisitGrammar } from './read/visit.ts';
import type { Shape } from './text/recover.ts';

/** What a journal says of the pair itself. */
export const pairKeys = {
  pair: {
    value: ownName,
    example: 'pair: LW-1',
    takes: 'the id of the pair',
    alsoSaid: ['couple', 'breeding pair', 'pair id', 'pair number'],
  },
  species: speciesKey,
  cock: {
    value: parents,
    example: 'cock: LW-19-04',
    takes: 'a bird, or a list where it is one of these',
    alsoSaid: ['male', 'father', 'sire'],
  },
  hen: {
    value: parents,
    example: 'hen: LW-20-11',
    takes: 'a bird, or a list where it is one of these',
    alsoSaid: ['female', 'mother', 'dam'],
  },
  housing: {
    value: housing,
    example: 'housing: flight 2',
    takes: 'cage, flight or aviary',
    alsoSaid: ['cage', 'flight', 'aviary', 'enclosure', 'pen'],
  },
  'nest-looks': {
    value: word('freely', 'sparingly', 'never'),
    example: 'nest-looks: sparingly',
    takes: 'freely, sparingly or never',
  },
} as const satisfies KeyTable;

/** What the entries of its log may say. */
export const pairLog: VisitGrammar = {
  observations,
  circumstances: ['time', 'after', 'clutch', 'site', 'note'],
  elsewhere: { observations: birdObservations, where: 'the log of the bird in birds.yaml' },
};

export const pairShape: Shape = { log: 'entries' };

const pairWords: Vocabulary = { ...pairKeys, log: logKey };

/** A journal with the keys above its entries spelt as ours are. */
export function journalAsOurs(written: Fields, findings: Finding[]): Fields {
  return asOurs(written, pairWords, findings);
}

/** Reads a pair's journal. A header that lacks something is a finding; its log counts all the same. */
export function readPairJournal(file: string, written: Fields, findings: Finding[]): PairJournal {
  const root = journalAsOurs(written, findings);
  const { pair, 'nest-looks': nestLooks, ...said } = readKeys(root, pairKeys, ['log'], findings);
  const name = nameOfFile(file);
  const top = { ...root.at, length: 1 };
  if (!root.pairs.some(([key]) => key.text === 'pair'))
    findings.push({ code: 'no-pair', at: top, args: { name } });
  const logs = root.pairs.filter(([key]) => key.text === 'log');
  if (logs.length === 0) findings.push({ code: 'no-log', at: top, args: {} });
  const reader = new LogReader<Observation>(pairLog, findings);
  const entries: Entry[] = [];
  for (const [index, [key, log]] of logs.entries()) {
    // Two logs are what is left of a merge that kept both sides: none of their lines may be lost.
    if (index > 0) findings.push({ code: 'second-log', at: key.at, args: {} });
    for (const entry of reader.read(log)) entries.push(entry);
  }
  return {
    file,
    pair: pair ?? { text: name, at: top },
    species: said.species,
    cock: said.cock ?? [],
    hen: said.hen ?? [],
    housing: said.housing,
    nestLooks,
    entries,
  };
}
