import { type MatchWishes, matchStock, type SpeciesMatch } from '../../../src/rules/match/proposals.ts';
import { type StockBird, stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, room } from '../../rooms.ts';

export interface Asked {
  keep?: string[];
  not?: string[];
  anew?: boolean;
  maxInbreeding?: number;
}

/** What is proposed in a room that stands in the test as text, for its first species. */
export function match(
  files: Files,
  on: string,
  { keep = [], not = [], anew = false, maxInbreeding }: Asked = {},
): SpeciesMatch {
  const known = room(files, on);
  const stock = stockOf(known);
  const wishes: MatchWishes = {
    keep: new Set(keep),
    not: new Set(not.map((id) => stock.birds.find((one) => one.id === id) as StockBird)),
    anew,
    maxInbreeding: maxInbreeding ?? null,
  };
  const [first] = matchStock(known, stock, wishes);
  if (first === undefined) throw new Error('nobody is here');
  return first;
}

/** `cock × hen`, sorted. */
export function pairsOf({ proposals }: SpeciesMatch): string[] {
  return proposals.map(({ cock, hen }) => `${cock.id} × ${hen.id}`).sort();
}

/** Why each bird has no mate. */
export function alone({ leftOut }: SpeciesMatch): Record<string, string> {
  return Object.fromEntries(leftOut.map(({ one, why }) => [one.id, why]));
}

const bird = (id: string, sex: string, more = '') =>
  `  - {id: ${id}, species: lavender waxbill, sex: ${sex}, hatched: 2023-04-01${more}}\n`;

/**
 * A dilemma. UNCLE has the fewest relatives of the cocks, but two of the three hens are his brother's daughters. OTHER
 * has brothers who live here too; STRANGER came from outside.
 */
export const dilemma: Files = {
  'birds.yaml': `birds:\n${[
    bird('UNCLE', 'cock', ', sire: GS, dam: GD').replace('2023', '2021'),
    bird('OTHER', 'cock', ', sire: P, dam: Q'),
    bird('BROTHER', 'cock', ', sire: P, dam: Q'),
    bird('YOUNGEST', 'cock', ', sire: P, dam: Q'),
    bird('NIECE-1', 'hen', ', sire: FATHER, dam: M'),
    bird('NIECE-2', 'hen', ', sire: FATHER, dam: M'),
    bird('STRANGER', 'hen'),
    '  - {id: FATHER, species: lavender waxbill, sex: cock, hatched: 2021-04-01, sire: GS, dam: GD, log: [{date: 2024-01-01, died: age}]}\n',
  ].join('')}`,
};
