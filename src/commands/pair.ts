import { nearest } from '../findings/nearest.ts';
import { pairJson } from '../report/json/pair.ts';
import { pairText } from '../report/terminal/pair.ts';
import { pairStory } from '../rules/season/story.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

export const definition: CommandDefinition = {
  examples: [
    {
      line: 'nestlog pair LW-1',
      says: 'its clutches, dates foreseen and real, every egg’s and chick’s fate',
    },
    { line: 'nestlog pair LW-1 --json', says: 'the same for a program' },
  ],
  arguments: [{ name: '<pair>', description: 'the pair’s id' }],
};

/** Prints one pair's story. */
export function run(context: Context): ExitCode {
  const { stdout, json } = context;
  const [id = ''] = context.arguments;
  const { room } = openRoom(context);
  const pair = room.pairs.find((known) => known.id === id);
  if (pair === undefined) {
    const ids = room.pairs.map((known) => known.id);
    const near = nearest(id, ids);
    const more =
      near === null ? `there is ${ids.length === 0 ? 'none' : ids.join(', ')}` : `did you mean \`${near}\`?`;
    throw new UsageError(`no pair \`${id}\` in this room; ${more}`);
  }
  const story = pairStory(room, pair);
  const { width, color } = stdout;
  stdout.write(json ? pairJson(story) : pairText(story, { width, color }));
  return 0;
}
