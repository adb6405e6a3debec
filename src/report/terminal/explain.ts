import type { TaskWords } from '../../rules/agenda/item.ts';
import type { WarningWords } from '../../rules/warnings/warning.ts';
import { LEVEL_MEANS, LEVEL_WORDS } from './due/warnings.ts';
import type { Screen } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, wrap } from './width.ts';

/** What is explained: its name and what it says, its facts line by line, why, and a last word. */
interface Explanation {
  name: string;
  says: string;
  facts: readonly (readonly [label: string, text: string])[];
  explain: string;
  close: string | null;
}

const LABEL = 8;

/** What a task or a warning means: its days or its cause, what ends it, and why it is asked for. */
export function explainText(words: TaskWords | WarningWords, { width, color }: Screen): string {
  const look = styles(color);
  const { name, says, facts, explain, close } = 'task' in words ? ofTask(words) : ofWarning(words);
  const row = (label: string, text: string) =>
    wrap(visible(text), width, { hanging: LABEL, taken: LABEL }).map((line, i) =>
      i === 0 ? `${look.muted(pad(label, LABEL))}${line}` : line,
    );
  return `${[
    `${look.heading(visible(name))}: ${visible(says)}`,
    '',
    ...facts.flatMap(([label, text]) => row(label, text)),
    '',
    ...wrap(visible(explain), width),
    ...(close === null ? [] : ['', ...wrap(visible(close), width).map(look.muted)]),
  ].join('\n')}\n`;
}

function ofTask({ task, say, when, doneBy, over, explain }: TaskWords): Explanation {
  return {
    name: task,
    says: say,
    facts: [
      ['when', when],
      ['done', doneBy],
      ['over', over],
    ],
    explain,
    close: `Not for one clutch: write \`skip: ${task}\` into its pair's journal.`,
  };
}

function ofWarning({ kind, levels, health, when, over, explain }: WarningWords): Explanation {
  return {
    name: kind,
    says: 'a warning',
    facts: [
      ['when', when],
      ['over', over],
      ['level', levels.map((level) => `${LEVEL_WORDS[level]}, ${LEVEL_MEANS[level]}`).join('; ')],
    ],
    explain,
    close: health ? 'Nothing here replaces an avian vet.' : null,
  };
}
