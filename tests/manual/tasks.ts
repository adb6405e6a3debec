import { LEVEL_MEANS } from '../../src/report/terminal/due/warnings.ts';
import { taskWords } from '../../src/rules/agenda/tasks.ts';
import { warnings } from '../../src/rules/warnings/index.ts';
import type { WarningWords } from '../../src/rules/warnings/warning.ts';

/** The reference of all that a morning can say. */
export function tasksPage(): string {
  return `# What a morning can say

<!-- Made from src/rules by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`: change it there. -->

A task is *coming* before its first day, *now* inside its days, *late* after them while it is not done. Where a date is
uncertain, a task takes the end that harms nobody: food, warmth and watching from the earliest possible day; calling an egg
clear or overdue, taking the nest out, parting young from the latest. Tasks that need a look into the nest are not made
where \`nest-looks: never\` stands, once under \`sparingly\`, and never around hatching or in the week before fledging; of what
did not hatch you are asked until you tell, under \`never\` once the nest is empty of young.

One of these on your screen: \`nestlog due --explain NAME\`, of a task or a warning. Not for one clutch: \`skip: TASK\`.

## Tasks

${taskWords.map(section).join('\n\n')}

## Warnings

${levels()}. One warning a cause; each has an end. Nothing here replaces
an avian vet.

${warnings.map(warningSection).join('\n\n')}
`;
}

const levels = () =>
  Object.entries(LEVEL_MEANS)
    .map(([level, means]) => `*${level}*: ${means}`)
    .join('; ');

function warningSection({ kind, levels, when, over, explain }: WarningWords): string {
  return `### \`${kind}\` (${levels.join(', ')})

${explain}

- when: ${when}
- over: ${over}`;
}

function section({ task, say, when, doneBy, over, explain }: (typeof taskWords)[number]): string {
  return `### \`${task}\`: ${say}

${explain}

- when: ${when}
- done: ${doneBy}
- over: ${over}`;
}
