/** What a terminal takes to lose the line that the cursor is on. */
const CLEAR = '\r\u001b[K';
/** Milliseconds before anybody begins to wonder, and between two words. */
const PATIENCE = 500;

/** One line that says what is being waited for, and goes away before anything else is printed. */
export interface Progress {
  tell(text: string): void;
  clear(): void;
}

/**
 * A line of progress on a terminal. Nothing is written in the first half second.
 *
 * @param write to the terminal
 * @param now milliseconds of any clock that does not go back
 */
export function progressLine(write: (text: string) => void, now: () => number): Progress {
  let next = now() + PATIENCE;
  let shown = false;
  return {
    tell(text) {
      const time = now();
      if (time < next) return;
      next = time + PATIENCE;
      shown = true;
      write(`${CLEAR}${text}`);
    },
    clear() {
      if (shown) write(CLEAR);
      shown = false;
    },
  };
}
