import { Chalk } from 'chalk';

/**
 * Numbers in the fixed part of the 256-colour palette (16–255, which themes leave alone), picked to be read on black
 * and on white alike: at least 4 : 1 on either, by the contrast ratio of WCAG 2.
 */
export const hues = { red: 161, amber: 130, green: 28, blue: 31, grey: 243 } as const;

/** What a piece of text is, whatever it looks like. Colour never says anything that the words do not. */
export type Meaning =
  | 'heading'
  | 'task'
  | 'late'
  | 'now'
  | 'coming'
  | 'act'
  | 'watch'
  | 'note'
  | 'error'
  | 'hint'
  | 'place'
  | 'marker'
  | 'muted';

/** Gives a text the look of its meaning. One line at a time. */
export type Styles = Record<Meaning, (text: string) => string>;

/** The styles of a stream, by the one decision that was made for it. */
export function styles(color: boolean): Styles {
  const chalk = new Chalk({ level: color ? 2 : 0 });
  // One argument each, so that a style can be handed to `map`: chalk joins all it is given.
  const bold = (text: string) => chalk.bold(text);
  const urgent = (text: string) => chalk.bold.ansi256(hues.red)(text);
  const calm = (text: string) => chalk.ansi256(hues.blue)(text);
  return {
    heading: bold,
    task: bold,
    late: urgent,
    now: (text) => chalk.bold.ansi256(hues.green)(text),
    coming: calm,
    act: urgent,
    watch: (text) => chalk.bold.ansi256(hues.amber)(text),
    note: calm,
    error: urgent,
    hint: (text) => chalk.ansi256(hues.amber)(text),
    place: bold,
    marker: urgent,
    muted: (text) => chalk.ansi256(hues.grey)(text),
  };
}
