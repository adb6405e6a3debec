import { attacks } from '../hostile/attacks.ts';

/** The page on what the program was made to bear; its rows are trials that run with the tests. */
export function hostilePage(): string {
  const rows = attacks.map(({ tried, happens }) => `| ${tried} | ${happens} |`);
  return `# What was tried to break it

<!-- Made from tests/hostile/attacks.ts by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`. -->

Journals come from editors, merges, imports and other keepers. Whatever a file holds, \`check\` names it with its place,
everything else counts, and no program is run, no address fetched and no file outside the room read because of it. Each row is
tried with the built program at every run of the tests, beside a sound pair that must keep its morning.

| tried | what happens |
|---|---|
${rows.join('\n')}

Beyond these, \`npm run fuzz\` makes slips in real journals by the hundred thousand (lines cut, swapped, repeated, joined; brackets,
quotes, marks and digits put where they do not belong) and writes rooms at random. Each is read, understood and printed: nothing may
crash, take longer than two seconds, lose a line of a log without a finding, put an egg or a bird in two places, or let what was
written later change what was known before. A shorter run is part of the tests.
`;
}
