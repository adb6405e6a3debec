/** What is known about one output stream before anything is written to it. */
interface StreamFacts {
  /** `--color` or `--no-color`; undefined when neither was given. */
  flag: boolean | undefined;
  environment: Record<string, string | undefined>;
  isTerminal: boolean;
  /** What the stream says of itself, in columns. */
  columns: number | undefined;
}

const USUAL_WIDTH = 80;

/**
 * Whether this stream gets colour: the flag, then `FORCE_COLOR` (`0` and `false` forbid), then a `NO_COLOR` that is not
 * empty (https://no-color.org), then `TERM=dumb`, then whether it is a terminal.
 */
export function wantsColor({ flag, environment, isTerminal }: Omit<StreamFacts, 'columns'>): boolean {
  if (flag !== undefined) return flag;
  const { FORCE_COLOR, NO_COLOR, TERM } = environment;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== '0' && FORCE_COLOR !== 'false';
  if (NO_COLOR) return false;
  if (TERM === 'dumb') return false;
  return isTerminal;
}

/** The width of the lines, in columns: `COLUMNS`, else the stream's own, else 80. */
export function widthOf({ environment, columns }: Pick<StreamFacts, 'environment' | 'columns'>): number {
  const asked = Number(environment.COLUMNS);
  if (Number.isInteger(asked) && asked > 0) return asked;
  return columns && columns > 0 ? columns : USUAL_WIDTH;
}
