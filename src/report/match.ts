import type { Day } from '../days.ts';
import type { JudgedMating } from '../rules/match/mating.ts';
import type { SpeciesMatch } from '../rules/match/proposals.ts';

/** What is proposed for the next season, whatever it is then printed as. */
export interface MatchPage {
  day: Day;
  room: string | null;
  /** The highest F that is proposed; null for any. */
  limit: number | null;
  /** Whether pairs that were not parted were open to change. */
  anew: boolean;
  species: SpeciesMatch[];
}

/** One pair that there is, judged as proposals are. */
export interface JudgedPair {
  day: Day;
  pair: string;
  limit: number | null;
  mating: JudgedMating;
}
