import { birdObservations } from '../../journal/bird-observations/index.ts';
import type { ObservationDefinition } from '../../journal/grammar/observation.ts';
import { observations } from '../../journal/observations/index.ts';

/** One snippet in the JSON form that editors share: `$1` is where the cursor goes first. */
interface Snippet {
  prefix: string;
  body: string[];
  description: string;
}

const TODAY = '$CURRENT_YEAR-$CURRENT_MONTH-$CURRENT_DATE';

/** Beginnings of files and lists that are more than one line. */
const pages: Record<string, Snippet> = {
  'pair journal': {
    prefix: 'pair',
    body: [
      `pair: \${1:LW-1}`,
      `species: \${2:lavender waxbill}`,
      `cock: \${3:unknown}`,
      `hen: \${4:unknown}`,
      `housing: \${5:flight 2}`,
      'log:',
      `  - {date: ${TODAY}, paired}`,
      '$0',
    ],
    description: 'a pair’s journal from its first line',
  },
  bird: {
    prefix: 'bird',
    body: [
      `- id: \${1:LW-19-04}`,
      `  species: \${2:lavender waxbill}`,
      `  sex: \${3|cock,hen,unknown|}`,
      `  hatched: \${4:${TODAY}}`,
      '  log:',
      `    - {date: ${TODAY}, arrived: \${5:quarantine cage}}`,
      '$0',
    ],
    description: 'a bird of birds.yaml that came from outside',
  },
  entry: {
    prefix: 'entry',
    body: [`- {date: ${TODAY}, $1, note: "$2"}`, '$0'],
    description: 'an entry of today with a note',
  },
  routine: {
    prefix: 'routine',
    body: [
      `- {name: \${1:worm count}, every: \${2:90}, say: \${3:droppings of all flights to the vet}}`,
      '$0',
    ],
    description: 'a task of your own in nestlog.yaml',
  },
};

/** Snippets for journals, as the JSON file that editors read: an entry of today for every observation. */
export function snippetsText(): string {
  const entries = [
    ...Object.entries(observations).map(([key, definition]) => entrySnippet(key, key, definition)),
    ...Object.entries(birdObservations)
      .filter(([key]) => !Object.hasOwn(observations, key))
      .map(([key, definition]) => entrySnippet(key, `${key} (birds.yaml)`, definition)),
  ];
  return `${JSON.stringify({ ...pages, ...Object.fromEntries(entries) }, null, 2)}\n`;
}

/** The observation's own example as an entry of today, its value ready to be typed over. */
function entrySnippet(
  key: string,
  name: string,
  { example, doc }: ObservationDefinition,
): readonly [string, Snippet] {
  const value = example.slice(key.length).replace(/^: /, '');
  // A closing brace would end the placeholder.
  const typed = value === '' ? key : `${key}: \${1:${value.replaceAll('}', '\\}')}}`;
  return [name, { prefix: key, body: [`- {date: ${TODAY}, ${typed}}`, '$0'], description: doc }];
}
