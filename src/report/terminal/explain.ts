import type { TaskWords } from '../../rules/agenda/item.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, wrap } from './width.ts';

interface Options {
  width: number;
  color: boolean;
}

const LABEL = 8;

/** What one task means: its days, what ends it, and why it is asked for. */
export function explainText(
  { task, say, when, doneBy, over, explain }: TaskWords,
  { width, color }: Options,
): string {
  const look = styles(color);
  const row = (label: string, text: string) =>
    wrap(visible(text), width, { hanging: LABEL, taken: LABEL }).map((line, i) =>
      i === 0 ? `${look.muted(pad(label, LABEL))}${line}` : line,
    );
  return `${[
    `${look.heading(visible(task))}: ${visible(say)}`,
    '',
    ...row('when', when),
    ...row('done', doneBy),
    ...row('over', over),
    '',
    ...wrap(visible(explain), width),
    '',
    ...wrap(`Not for one clutch: write \`skip: ${visible(task)}\` into its pair's journal.`, width).map(
      look.muted,
    ),
  ].join('\n')}\n`;
}
