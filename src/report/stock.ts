import type { Day } from '../days.ts';
import type { GroupDiversity } from '../rules/stock/groups.ts';
import type { StockBird } from '../rules/stock/stock.ts';

/** One species of the stock as it is shown. */
export interface StockGroup {
  species: string | null;
  birds: StockBird[];
  /** How varied all birds of the species here are, and those old enough to breed; null where only some are shown. */
  living: GroupDiversity | null;
  breeders: GroupDiversity | null;
}

/** Who is here, or who has left, whatever it is then printed as. */
export interface StockPage {
  day: Day;
  room: string | null;
  groups: StockGroup[];
  /** Whether this is about those that left. */
  gone: boolean;
  /** Chicks of whom nobody wrote what became of them. */
  unaccounted: StockBird[];
}
