import type { Day } from '../../days.ts';
import type { Entry } from '../../journal/entry.ts';
import type { Located } from '../../journal/grammar/values.ts';
import type { Observation } from '../../journal/observations/index.ts';
import type { RoomEntry } from '../../journal/settings.ts';
import { stated } from '../../words.ts';
import type { Discreet } from '../discretion/discretion.ts';

/** Something of one day, in words. */
export interface Dated {
  day: Day;
  text: string;
}

/** What the keeper did for a pair, and how the two got on. */
export interface AccountCare {
  /** Put together, parted, courting, chasing. */
  together: Dated[];
  /** Each nest with its place, height and material. */
  nests: Dated[];
  /** What was offered from that day on. */
  food: Dated[];
}

/** Care as the journal has it, in order of time. Free text goes through the keeper's discretion. */
export function careOf(
  entries: readonly Entry[],
  rooms: readonly RoomEntry[],
  discreet: Discreet,
): AccountCare {
  const care: AccountCare = { together: [], nests: [], food: [] };
  const add = (list: Dated[], day: Day, text: string | null) => {
    if (text !== null && list.at(-1)?.text !== text) list.push({ day, text });
  };
  for (const { date, saw, site } of entries) {
    for (const observation of saw) {
      add(care.together, date, togetherText(observation, discreet));
      if (observation.key === 'nest')
        add(care.nests, date, nestText(observation.value, site?.text ?? null, discreet));
      if (observation.key === 'food') add(care.food, date, foodText(observation.value, discreet));
    }
  }
  const forAll = rooms.flatMap(({ date, food }) => {
    const text = food === null ? null : foodText(food, discreet);
    return text === null ? [] : [{ day: date, text: `${text} (for the whole room)` }];
  });
  return { ...care, food: [...care.food, ...forAll].sort((a, b) => a.day - b.day) };
}

function togetherText(observation: Observation, discreet: Discreet): string | null {
  switch (observation.key) {
    case 'paired': {
      const { cock, hen } = observation.value;
      return cock === null && hen === null
        ? 'put together'
        : `put together with a new ${hen === null ? 'cock' : 'hen'}`;
    }
    case 'reunited':
      return 'put together again';
    case 'parted':
      return 'parted';
    case 'courting': {
      const how = observation.value === null ? null : discreet(observation.value.text);
      return how === null ? 'courting' : `courting: ${how}`;
    }
    case 'chasing': {
      const { by, at, level } = observation.value;
      const who = [by, at].map((one) => roleOf(one?.text ?? null));
      return `${level ?? 'some'} chasing${who[0] === null ? '' : ` by ${who[0]}`}${who[1] === null ? '' : `, of ${who[1]}`}`;
    }
    default:
      return null;
  }
}

/** Who it was as far as that names nobody. */
function roleOf(text: string | null): string | null {
  if (text === null) return null;
  if (text === 'cock' || text === 'hen') return `the ${text}`;
  return text === 'both' ? 'both' : /(?:^|\/)c\d+$/.test(text) ? 'the young' : 'another bird';
}

type NestValue = Extract<Observation, { key: 'nest' }>['value'];

function nestText(
  { state, site, height, material }: NestValue,
  at: string | null,
  discreet: Discreet,
): string | null {
  const words = (text: string | null | undefined) => (text ? discreet(text) : null);
  const place = words(site?.text ?? at);
  const tall = words(height?.text);
  const stuff = words(material?.text);
  const parts = [
    state ?? 'nest',
    place,
    tall === null ? null : `height ${tall}`,
    stuff === null ? null : `of ${stuff}`,
  ];
  return stated(parts, ', ');
}

type FoodValue = readonly { kind: Located; grams: number | null }[];

function foodText(value: FoodValue, discreet: Discreet): string | null {
  const kinds = value.flatMap(({ kind, grams }) => {
    const name = discreet(kind.text);
    return name === null ? [] : [grams === null ? name : `${name} ${grams} g a day`];
  });
  return kinds.length === 0 ? null : kinds.join(', ');
}
