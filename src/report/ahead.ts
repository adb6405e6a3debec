import type { Finding } from '../findings/finding.ts';
import type { Ahead } from '../rules/ahead/ahead.ts';

/** The weeks ahead, and what could not be read and so is not in them, whatever it is then printed as. */
export interface AheadPage extends Ahead {
  findings: Finding[];
}
