import type { Files } from '../rooms.ts';

/** The day on which the family is looked at. */
export const FAMILY_DAY = '2026-05-17';

/**
 * A room with much to tell: star finches of three generations with close kin among them, a pair that stays, one that
 * was parted, a chick brought up by others, birds that died, left, were never accounted for or are in quarantine, and
 * two zebra finches from one place.
 */
export const family: Files = {
  'nestlog.yaml': 'room: the long shed\n',
  'birds.yaml': `
    birds:
      - id: SF-20-01
        species: star finch
        sex: cock
        hatched: 2020-04-02
        origin: the autumn show
        log:
          - {date: 2021-01-10, arrived: flight 1}
          - {date: 2021-02-10, released: flight 1, weighed: 13.1}
          - {date: 2025-11-02, moult: started}
          - {date: 2025-12-20, moult: done, weighed: 12.8}
      - {id: SF-20-02, species: star finch, sex: hen, hatched: 2020-04-20, log: [{date: 2025-08-03, died: age}]}
      - {id: SF-23-11, is: SF-1/1/c1, sex: cock}
      - {id: SF-23-12, is: SF-1/1/c2, sex: cock}
      - {id: SF-23-13, is: SF-1/1/c3, sex: hen, log: [{date: 2024-09-14, gone: sold}]}
      - {id: SF-22-30, species: star finch, sex: hen, hatched: 2022-05-01, sire: [SF-17-01, SF-17-04], dam: SF-18-02}
      - {id: SF-24-50, species: star finch, sex: cock, hatched: 2024-06-06}
      - {id: SF-24-51, is: SF-2/1/c1, sex: hen}
      - {id: SF-24-52, is: SF-2/1/c2, sex: hen}
      - {id: SF-25-60, species: star finch, sex: hen, hatched: 2025-01-30, log: [{date: 2026-05-02, arrived: cage 9}]}
      - {id: ZF-1, ring: 2291, species: zebra finch, sex: cock, origin: a dealer}
      - {id: ZF-2, ring: 2292, species: zebra finch, sex: hen, origin: a dealer}
  `,
  'SF-1': `
    pair: SF-1
    species: star finch
    cock: SF-20-01
    hen: SF-20-02
    housing: flight 1
    log:
      - {date: 2023-02-01, paired}
      - {date: 2023-02-12, clutch: 1, laid: 3}
      - {date: 2023-02-28, hatched: 3}
      - {date: 2023-03-08, ringed: {c1: SF 23 11, c2: SF 23 12}}
      - {date: 2023-03-20, fledged: all}
      - {date: 2023-04-10, independent: all}
      - {date: 2023-07-01, moved: {c1: flight 2, c2: flight 1}}
  `,
  'SF-2': `
    pair: SF-2
    species: star finch
    cock: SF-23-11
    hen: SF-22-30
    housing: flight 2
    log:
      - {date: 2024-02-01, paired}
      - {date: 2024-02-12, clutch: 1, laid: 3}
      - {date: 2024-02-28, hatched: 3}
      - {date: 2024-03-01, fostered: {SF-1: c2}}
      - {date: 2024-03-20, fledged: all}
      - {date: 2024-04-10, independent: [c1, c2]}
      - {date: 2024-04-12, treated: {c1: what the vet ordered for mites}, unwell: {c1: scratching}}
      - {date: 2026-02-01, parted}
  `,
  'SF-3': `
    pair: SF-3
    species: star finch
    cock: SF-20-01
    hen: SF-24-51
    housing: flight 1
    log:
      - {date: 2026-03-01, paired}
      - {date: 2026-03-14, clutch: 1, laid: 2}
      - {date: 2026-03-30, hatched: 2}
      - {date: 2026-04-08, ringed: {c1: SF 26 01}, weighed: {c1: 9.2}}
      - {date: 2026-04-20, fledged: c1}
  `,
};
