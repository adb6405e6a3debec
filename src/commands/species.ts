import { speciesJson, speciesListJson } from '../report/json/species.ts';
import { recordText, speciesListText, speciesText } from '../report/terminal/species.ts';
import { speciesList, speciesView } from '../rules/species/view.ts';
import { findSpecies, suggestSpecies } from '../species/find.ts';
import { traits } from '../species/traits.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface SpeciesOptions {
  record?: true;
  kept?: true;
  liveFood?: string;
  named?: string;
}

export const definition: CommandDefinition = {
  examples: [
    {
      line: 'nestlog species "lavender waxbill"',
      says: 'every value, where it comes from, what this room saw',
    },
    { line: 'nestlog species LW-1 --record', says: 'past forecasts of its species beside what happened' },
    { line: 'nestlog species --kept', says: 'the species of this room' },
    { line: 'nestlog species --live-food required', says: 'species that are not reared without live food' },
  ],
  arguments: [{ name: '[name]', description: 'a common or scientific name, or a pair of the room' }],
  options: [
    { flags: '--record', description: 'past forecasts beside what happened' },
    { flags: '--kept', description: 'list: only species with a pair in this room' },
    {
      flags: '--live-food <need>',
      description: `list: ${traits.liveFood.words?.join(', ')}`,
      parse: liveFood,
    },
    { flags: '--named <part>', description: 'list: part of a name' },
  ],
  room: 'optional',
};

/** Prints one species, or the list of them. */
export function run(context: Context<SpeciesOptions>): ExitCode {
  const { options, stdout, json, day } = context;
  const { record, room } = openRoom(context);
  const [name] = context.arguments;
  const layout = { width: stdout.width, color: stdout.color };
  if (name === undefined) {
    const filter = {
      kept: options.kept ?? false,
      liveFood: options.liveFood ?? null,
      named: options.named ?? null,
    };
    const profiles = speciesList(room, record.ownSpecies, filter);
    stdout.write(json ? speciesListJson(profiles) : speciesListText(profiles, layout));
    return 0;
  }
  const pair = room.pairs.find(({ id }) => id === name);
  const profile = pair === undefined ? findSpecies(name, record.ownSpecies) : pair.profile;
  if (profile === null) throw new UsageError(unknown(name, suggestSpecies(name, record.ownSpecies)));
  const view = speciesView(room, profile);
  if (json) stdout.write(speciesJson(view));
  else stdout.write(options.record ? recordText(view, day, layout) : speciesText(view, layout));
  return 0;
}

function unknown(name: string, suggestion: string | null): string {
  const more =
    suggestion === null ? '`nestlog species` lists all there are' : `did you mean "${suggestion}"?`;
  return `no profile of "${name}"; ${more}`;
}

function liveFood(text: string): string {
  if (traits.liveFood.words?.includes(text)) return text;
  throw new UsageError(`--live-food takes ${traits.liveFood.words?.join(', ')}, not \`${text}\``);
}
