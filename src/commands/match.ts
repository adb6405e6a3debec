import { shareMeant } from '../findings/figures-meant.ts';
import { parseShare } from '../journal/grammar/amounts.ts';
import { judgedPairJson, matchJson } from '../report/json/match.ts';
import { judgedPairText, matchText } from '../report/terminal/match.ts';
import { judge, matingOf } from '../rules/match/mating.ts';
import { matchStock } from '../rules/match/proposals.ts';
import { matesOf } from '../rules/match/staying.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { pairNamed, speciesNamed } from './named.ts';
import { birdNamed, type OpenStock, openStock } from './open-stock.ts';
import { UsageError } from './usage-error.ts';

interface MatchOptions {
  keep?: string[];
  not?: string[];
  anew?: true;
  maxInbreeding?: number;
  pair?: string;
}

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog match', says: 'whom to pair with whom in the next season, and why' },
    { line: 'nestlog match "lavender waxbill" --keep LW-1', says: 'with LW-1 together, parted or not' },
    {
      line: 'nestlog match --not LW-21-04 --max-inbreeding 6.25%',
      says: 'without a bird, and without close kin',
    },
    { line: 'nestlog match --pair LW-1', says: 'a pair that there is, judged in the same way' },
  ],
  arguments: [{ name: '[species]', description: 'one species; without it every species' }],
  options: [
    {
      flags: '--keep <pair>',
      description: 'a pair that is to stay or come together; may be repeated',
      parse: more,
    },
    { flags: '--not <bird>', description: 'a bird to leave out; may be repeated', parse: more },
    {
      flags: '--anew',
      description: 'pairs that were not parted are open to change as well, but for those to keep',
    },
    {
      flags: '--max-inbreeding <F>',
      description:
        'the highest inbreeding of young to propose, 0.125 or 12.5% (default: the limit in nestlog.yaml, or any)',
      parse: coefficient,
    },
    { flags: '--pair <pair>', description: 'judge this pair instead' },
  ],
};

/** Prints proposals for the next season, or what there is to say of one pair. */
export function run(context: Context<MatchOptions>): ExitCode {
  const { options, stdout, json } = context;
  const open = openStock(context);
  const { room, stock } = open;
  const limit = options.maxInbreeding ?? room.settings.limits.maxInbreeding;
  if (options.pair !== undefined) {
    const judged = { day: room.day, limit, ...judgedPair(options.pair, open) };
    stdout.write(json ? judgedPairJson(judged) : judgedPairText(judged, stdout));
    return 0;
  }
  const anew = options.anew ?? false;
  const [name] = context.arguments;
  const species = name === undefined ? null : speciesNamed(name, room);
  const matches = matchStock(room, stock, {
    keep: new Set((options.keep ?? []).map((pair) => pairToKeep(pair, open))),
    not: new Set((options.not ?? []).map((bird) => birdNamed(bird, open))),
    anew,
    maxInbreeding: limit,
  }).filter((match) => species === null || match.species === species);
  if (species !== null && matches.length === 0) throw new UsageError(`no ${species} is here on that day`);
  const page = { day: room.day, room: room.settings.room, limit, anew, species: matches };
  stdout.write(json ? matchJson(page) : matchText(page, stdout));
  return 0;
}

function judgedPair(name: string, open: OpenStock) {
  const pair = pairNamed(name, open.room);
  const mates = matesOf(pair, open.stock);
  if (mates === null) throw new UsageError(notTwo(name));
  return { pair: pair.id, mating: judge(matingOf(...mates, open.stock), open.stock) };
}

function pairToKeep(name: string, open: OpenStock): string {
  const pair = pairNamed(name, open.room);
  if (matesOf(pair, open.stock) === null) throw new UsageError(notTwo(name));
  return pair.id;
}

function notTwo(pair: string): string {
  return `of ${pair} there are no two known birds here: one is not named, may be one of several, has died or left`;
}

function more(text: string, before: string[] = []): string[] {
  return [...before, text];
}

/** `0.125` or `12.5%`. */
function coefficient(text: string): number {
  const value = parseShare(text);
  if (value !== null) return value;
  const meant = shareMeant(text);
  const more = meant === '' ? '' : `; did you mean ${meant}?`;
  throw new UsageError(
    `--max-inbreeding takes a number from 0 to 1 or a percentage, such as 0.125 or 12.5%, not \`${text}\`${more}`,
  );
}
