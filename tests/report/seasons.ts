import type { Page } from '../../src/report/terminal/page.ts';
import { styles } from '../../src/report/terminal/style.ts';
import type { PairStory } from '../../src/rules/season/story.ts';
import { pairStory } from '../../src/rules/season/story.ts';
import { room as known, ON } from '../published/known-season.ts';
import { type Files, room } from '../rooms.ts';

export { book, FOUR, pair, waxbills } from '../rules/season/rooms.ts';
export { known, ON };

/** A page without colour. */
export function page(width = 80): Page {
  return { width, look: styles(false) };
}

/** The story of a pair of a room that stands in the test as text. */
export function story(id: string, files: Files = known, on = ON): PairStory {
  const understood = room(files, on);
  const found = understood.pairs.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no pair ${id}`);
  return pairStory(understood, found);
}
