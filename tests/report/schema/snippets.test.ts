import { describe, expect, test } from 'vitest';
import { birdObservations } from '../../../src/journal/bird-observations/index.ts';
import { observations } from '../../../src/journal/observations/index.ts';
import { snippetsText } from '../../../src/report/schema/snippets.ts';
import { record } from '../../rooms.ts';

interface Snippet {
  prefix: string;
  body: string[];
  description: string;
}

const snippets = JSON.parse(snippetsText()) as Record<string, Snippet>;

/** What an editor would leave in the file if nothing were typed over. */
function typed({ body }: Snippet): string {
  return body
    .join('\n')
    .replaceAll('$CURRENT_YEAR-$CURRENT_MONTH-$CURRENT_DATE', '2026-03-01')
    .replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:((?:\\\}|[^}])*)\}/g, (_, text: string) => text.replaceAll('\\}', '}'))
    .replace(/\$\d/g, '');
}

const findings = (path: string, text: string) =>
  record({ [path]: text }, '2026-06-01').findings.map(({ code }) => code);

describe('a snippet is an entry that the reader takes', () => {
  test.each(Object.keys(observations))('%s', (key) => {
    const entry = typed(snippets[key] as Snippet).trim();
    expect(findings('lw-1', `pair: LW-1\nlog:\n  ${entry}\n`)).toEqual([]);
  });

  const own = Object.keys(birdObservations).filter((key) => !Object.hasOwn(observations, key));
  test.each(own)('%s of a bird', (key) => {
    const entry = typed(snippets[`${key} (birds.yaml)`] as Snippet).trim();
    expect(findings('birds.yaml', `birds:\n  - id: A-1\n    log:\n      ${entry}\n`)).toEqual([]);
  });
});

test('a journal, a bird and a routine are begun', () => {
  expect(findings('lw-1', typed(snippets['pair journal'] as Snippet))).toEqual([]);
  const bird = typed(snippets.bird as Snippet).replace(/^/gm, '  ');
  expect(findings('birds.yaml', `birds:\n${bird}`)).toEqual([]);
  expect(findings('nestlog.yaml', `routines:\n  ${typed(snippets.routine as Snippet)}`)).toEqual([]);
});
