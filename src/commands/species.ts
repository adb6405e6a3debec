import { roomRecordJson, speciesJson, speciesListJson } from '../report/json/species.ts';
import type { Screen } from '../report/terminal/page.ts';
import { keptSpeciesText, speciesListText } from '../report/terminal/species/list.ts';
import { recordText, roomRecordText } from '../report/terminal/species/record.ts';
import { speciesText } from '../report/terminal/species.ts';
import { keptSpecies, speciesList } from '../rules/species/list.ts';
import { roomRecords } from '../rules/species/records.ts';
import { speciesView } from '../rules/species/view.ts';
import { findSpecies, suggestSpecies } from '../species/find.ts';
import { comparable } from '../species/names.ts';
import type { Profile } from '../species/profile.ts';
import { traits } from '../species/traits.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { meant } from './meant.ts';
import { asWritten } from './named.ts';
import { oneOf } from './one-of.ts';
import { type OpenRoom, openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface SpeciesOptions {
  record?: true;
  kept?: true;
  liveFood?: string;
  named?: string;
}

/** Names that are shown where part of a name fits several species. */
const SHOWN = 5;

const needs = traits.liveFood.words ?? [];

export const definition: CommandDefinition = {
  examples: [
    {
      line: 'nestlog species lavender waxbill',
      says: 'every value, where it comes from, what this room saw',
    },
    { line: 'nestlog species LW-1 --record', says: 'past forecasts of its species beside what happened' },
    { line: 'nestlog species --record', says: 'how good the forecasts of all species were' },
    { line: 'nestlog species --kept', says: 'the species of this room, and what forecasts now use' },
    { line: 'nestlog species --live-food required', says: 'species that are not reared without live food' },
  ],
  arguments: [
    { name: '[name...]', description: 'a common or scientific name, part of one, or a pair of the room' },
  ],
  options: [
    { flags: '--record', description: 'past forecasts beside what happened' },
    { flags: '--kept', description: 'list: only species with a pair in this room' },
    oneOf('--live-food <need>', needs, `list: ${needs.join(', ')}`),
    { flags: '--named <part>', description: 'list: part of a name' },
  ],
  room: 'optional',
};

/** Prints one species, the list of them, or how good their forecasts were. */
export function run(context: Context<SpeciesOptions>): ExitCode {
  const { options, stdout, json, day } = context;
  const open = openRoom(context);
  const name = context.arguments.filter((word) => word !== undefined).join(' ');
  if (name !== '') {
    const view = speciesView(open.room, profileNamed(name, open));
    if (json) stdout.write(speciesJson(view));
    else stdout.write(options.record ? recordText(view, day, stdout) : speciesText(view, stdout));
  } else if (options.record) {
    const records = roomRecords(open.room);
    stdout.write(json ? roomRecordJson(records) : roomRecordText(records, stdout));
  } else stdout.write(listed(open, options, json, stdout));
  return 0;
}

function listed(
  { room, record }: OpenRoom,
  { kept, liveFood: need, named }: SpeciesOptions,
  json: boolean,
  stdout: Screen,
): string {
  const filter = { kept: kept ?? false, liveFood: need ?? null, named: named ?? null };
  const profiles = speciesList(room, record.ownSpecies, filter);
  if (json) return speciesListJson(profiles);
  return kept ? keptSpeciesText(keptSpecies(room, profiles), stdout) : speciesListText(profiles, stdout);
}

/** The profile of a pair or under a name; part of a name will do where it fits one species alone. */
function profileNamed(said: string, { room, record }: OpenRoom): Profile {
  const ids = room.pairs.map(({ id }) => id);
  const id = asWritten(said, ids);
  const pair = room.pairs.find((one) => one.id === id);
  const name = pair === undefined ? said : (pair.species ?? '');
  const exact = pair === undefined ? findSpecies(name, record.ownSpecies) : pair.profile;
  if (exact !== null) return exact;
  const partly =
    comparable(name) === ''
      ? []
      : speciesList(room, record.ownSpecies, { kept: false, liveFood: null, named: name });
  const [only, ...others] = partly;
  if (only !== undefined && others.length === 0) return only;
  const other =
    instead(name, partly, record.ownSpecies) ?? meant(name, ids, '`nestlog species` lists all there are');
  throw new UsageError(`no profile of "${name}"; ${other}`);
}

function instead(name: string, partly: readonly Profile[], own: readonly Profile[]): string | null {
  if (partly.length > 0) {
    const shown = partly.slice(0, SHOWN).map(({ species }) => species);
    const more = partly.length > SHOWN ? ` and ${partly.length - SHOWN} more` : '';
    return `did you mean ${shown.join(', ')}${more}? \`nestlog species --named "${name}"\` lists them`;
  }
  const suggestion = suggestSpecies(name, own);
  return suggestion === null ? null : `did you mean "${suggestion}"?`;
}
