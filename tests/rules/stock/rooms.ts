import { type Stock, type StockBird, stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, room } from '../../rooms.ts';

/** The stock of a room that stands in the test as text, on a day. */
export function stock(files: Files, on: string): Stock {
  return stockOf(room(files, on));
}

/** One bird of a stock, by any of its names. */
export function birdIn(of: Stock, name: string): StockBird {
  const bird = of.find(name);
  const found = bird === null ? null : of.of(bird);
  if (found === null) throw new Error(`nobody called ${name}`);
  return found;
}

/** A room of three generations: two founder pairs, their young paired with each other, and those in the nest. */
export const threeGenerations: Files = {
  'birds.yaml': `
    birds:
      - {id: A, species: lavender waxbill, sex: cock, hatched: 2021-03-01, log: [{date: 2022-01-10, arrived: flight 1}]}
      - {id: B, species: lavender waxbill, sex: hen, hatched: 2021-03-05}
      - {id: C, species: lavender waxbill, sex: cock, hatched: 2021-04-01}
      - {id: D, species: lavender waxbill, sex: hen, ring: LW 7}
      - {id: SON, is: LW-1/1/c1, sex: cock, ring: LW 21}
      - {id: GIRL, is: LW-2/1/c1, sex: hen}
  `,
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: A
    hen: B
    housing: flight 1
    log:
      - {date: 2024-03-01, paired}
      - {date: 2024-03-10, laid: 2, clutch: 1}
      - {date: 2024-03-24, hatched: 2}
      - {date: 2024-04-12, fledged: all}
      - {date: 2024-05-01, independent: all}
      - {date: 2024-06-01, parted}
  `,
  'LW-2': `
    pair: LW-2
    species: lavender waxbill
    cock: C
    hen: LW 7
    housing: flight 2
    log:
      - {date: 2024-03-01, paired}
      - {date: 2024-03-10, laid: 2, clutch: 1}
      - {date: 2024-03-24, hatched: 2}
      - {date: 2024-04-12, fledged: all}
      - {date: 2024-05-01, independent: all}
  `,
  'LW-3': `
    pair: LW-3
    species: lavender waxbill
    cock: LW-1/1/c1
    hen: GIRL
    housing: flight 3
    log:
      - {date: 2025-05-01, paired}
      - {date: 2025-05-10, laid: 3, clutch: 1}
      - {date: 2025-05-24, hatched: 3}
      - {date: 2025-06-12, fledged: [c1, c2]}
  `,
};

/** Days lie between two looks, so that nobody knows the day on which `LW-1/1/c1` hatched, or that on which it died. */
export const seldomLookedAt: Files = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-03-01, laid: 1, clutch: 1}
      - {date: 2026-03-02, sitting: hen}
      - {date: 2026-03-08, checked}
      - {date: 2026-03-18, hatched: 1}
      - {date: 2026-03-20, checked: {chicks: 1}}
      - {date: 2026-03-23, died: {chilled: c1}}
  `,
};
