import type { Day } from '../../days.ts';

/** `coming` before its first day, `now` inside its window, `late` after it and not done. */
export type TaskState = 'late' | 'now' | 'coming';

/** One thing to do, for one pair's nest, one bird or the whole room. */
export interface AgendaItem {
  task: string;
  /** The pair in whose nest it is to be done, or null for a bird's or the room's own task. */
  pair: string | null;
  bird: string | null;
  /** The pair's own clutch number; null where the nest holds only guests, or nothing of the kind. */
  clutch: number | null;
  /** Which eggs, chicks or birds, by ref; null where it is the pair or the whole nest. */
  who: string[] | null;
  housing: string | null;
  species: string | null;
  from: Day;
  /** The likely day, for forecasts only. */
  likely: Day | null;
  /** Last day of the window; null where it stays open until something happens. */
  to: Day | null;
  state: TaskState;
  /** What to do, a short phrase in the imperative: `candle the eggs`. */
  say: string;
  /** Anchor, date and days that lead here: `sitting since 4 Mar + 5–6 d`. */
  why: string;
  /** What a forecast rests on: `11–13 d, book`. Null for tasks that rest on no forecast. */
  basis: string | null;
  /** What sets it apart from the same task for the same clutch, such as the day of hatching; null for most. */
  apart: string | null;
}

/** The days in which a task is to be done. */
export interface TaskWindow {
  from: Day;
  likely: Day | null;
  /** Null: until something happens. */
  to: Day | null;
  /** The days counted from the anchor, in words: `+ 5–6 d`. */
  days: string;
  basis: string | null;
}

/** What a kind of task is, in words: for the item itself, for `due --explain` and for the manual. */
export interface TaskWords {
  task: string;
  /** What to do, in the imperative. */
  say: string;
  /** Its days in words: from what they are counted, and how many. */
  when: string;
  /** What a journal says once it is done. */
  doneBy: string;
  /** When it is no longer shown though nobody did it. */
  over: string;
  /** Why it is done and what it means, a few sentences. */
  explain: string;
}

/** How much a warning presses. */
export type WarningLevel = 'note' | 'watch' | 'act';

/** Something wrong or risky, with a reason that would convince an experienced keeper. */
export interface WarningLine {
  kind: string;
  level: WarningLevel;
  pair: string | null;
  bird: string | null;
  clutch: number | null;
  /** Where to look, which may not be where its pair lives. */
  housing: string | null;
  /** The day of what gave rise to it. */
  date: Day;
  /** What was seen and why it matters. */
  text: string;
  /** What to check. */
  check: string;
}
