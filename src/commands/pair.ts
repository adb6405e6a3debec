import { pairJson } from '../report/json/pair.ts';
import { pairText } from '../report/terminal/pair.ts';
import { pairStory } from '../rules/season/story.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { pairNamed } from './named.ts';
import { openRoom } from './room.ts';

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
  const story = pairStory(room, pairNamed(id, room));
  const { width, color } = stdout;
  stdout.write(json ? pairJson(story) : pairText(story, { width, color }));
  return 0;
}
