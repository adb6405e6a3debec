import type { FindingKind } from '../codes.ts';
import { figuresMeant, hoursMeant, shareMeant } from '../figures-meant.ts';
import type { FindingArgs } from '../finding.ts';

const meant = ({ suggestion }: FindingArgs) => (suggestion ? `did you mean ${suggestion}?` : null);

/** The figure that is meant, without its unit or with a point for its comma. */
function alone(text: FindingArgs[string] | undefined, unit: FindingArgs[string] | undefined): string | null {
  const figure = figuresMeant(String(text), String(unit ?? ''));
  return figure === '' || figure === text || figure.includes('-') ? null : `write ${figure}`;
}

/** What can be wrong with what stands behind a key. */
export const valueCodes = {
  'wrong-value': {
    level: 'error',
    text: ({ key, takes }) => `\`${key}\` takes ${takes}`,
    hint: ({ example }) => `such as \`${example}\``,
  },
  'turned-round': {
    level: 'error',
    text: ({ name }) => `the two sides of \`${name}\` are turned round`,
    hint: ({ name, meant }) => `write \`${name}: ${meant}\``,
  },
  'impossible-date': {
    level: 'error',
    text: ({ text, month, days }) =>
      month ? `there is no ${text}: ${month} has ${days} days` : `there is no ${text}: a year has 12 months`,
    hint: meant,
  },
  'date-shape': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is not how dates are written here`,
    hint: ({ suggestion, name, line }) => {
      if (line) return `write:\n${line}`;
      return suggestion
        ? `write \`${name ?? 'date'}: ${suggestion}\``
        : 'write year, month and day: 2026-03-01';
    },
  },
  'early-date': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is before any bird of this room was hatched`,
    hint: meant,
  },
  'other-year': {
    level: 'hint',
    text: ({ date, above }) => `${date} stands below ${above}: was it in that year?`,
    hint: ({ suggestion, date }) =>
      `did you mean ${suggestion}? If it was ${date}, put the line where its day belongs`,
  },
  'future-date': {
    level: 'error',
    text: ({ date, today }) => `${date} has not come yet: today is ${today}`,
    hint: meant,
  },
  'clock-behind': {
    level: 'error',
    text: ({ today, later, of }) =>
      `today is ${today} by this machine, and ${later} of ${of} entries are dated later: is its clock right?`,
    hint: ({ last }) => `set the clock, or stand on the day of the last entry: --date ${last}`,
  },
  'not-a-time': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is no time of day`,
    hint: ({ suggestion }) => (suggestion ? `write \`${suggestion}\`` : 'write hours and minutes: 07:30'),
  },
  'after-later': {
    level: 'error',
    text: () => '`after` is later than the entry itself',
    hint: () => '`after` says when you last looked; `date` when you saw it',
  },
  'zero-count': {
    level: 'error',
    text: () => '0 says that nothing was seen',
    hint: () => 'leave it out; only `candled` and `checked` may say 0',
  },
  'absurd-count': {
    level: 'error',
    text: ({ count }) => `${count} is more than one nest can hold`,
    hint: () => 'is a blank or a comma missing? Eggs by their number are e1, e2',
  },
  'negative-count': {
    level: 'error',
    text: ({ text }) => `${text} is less than none`,
    hint: () => 'eggs that are no longer there are `lost`: {missing: 1}, chicks have `died`',
  },
  'not-a-who': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is neither a count nor an egg, chick or bird`,
    hint: () => 'a count (2), a ref (e1), a list of refs ([e1, e2]), or all',
  },
  'not-a-ref': {
    level: 'error',
    text: ({ text }) =>
      text ? `\`${text}\` does not say which egg or chick` : 'this does not say which egg or chick',
    hint: () => 'a list names each of them: [e1, e2]; a count stands alone: 2',
  },
  'not-a-count': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is not a count`,
    hint: () => 'write digits: 2, or 3+ for at least three, ~3 for about three',
  },
  'not-whole': {
    level: 'error',
    text: ({ text, least }) => `\`${text}\` is no whole number of at least ${least}`,
    hint: ({ example, text, unit }) => alone(text, unit) ?? `such as \`${example}\``,
  },
  'not-a-number': {
    level: 'error',
    text: ({ text, unit }) => `\`${text}\` is not a number of ${unit}`,
    hint: ({ text, unit }) => {
      const [until] = /\d{4}-\d\d-\d\d/.exec(String(text)) ?? [];
      if (until !== undefined && unit === 'days') return `write \`{until: ${until}}\``;
      return alone(text, unit) ?? `write the number alone: ${unit === 'days' ? 30 : 4.5}`;
    },
  },
  'not-a-size': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is not an egg’s size`,
    hint: () => 'length x breadth in mm: 14.2 x 10.8',
  },
  'not-month-and-date': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is no day of a year`,
    hint: ({ suggestion }) => (suggestion ? `write ${suggestion}` : 'write month and date: 09-01'),
  },
  'not-a-share': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is no number from 0 to 1`,
    hint: ({ text }) => {
      const share = shareMeant(String(text));
      return share ? `write ${share}` : 'a coefficient of inbreeding, such as 0.125 or 12.5 %';
    },
  },
  'not-minutes': {
    level: 'error',
    text: ({ text }) => `\`${text}\` is no length of time`,
    hint: ({ text }) => {
      const meant = hoursMeant(String(text));
      return meant === '' ? 'write 45 min, or 3 h' : `write ${meant}`;
    },
  },
  'feeding-half': {
    level: 'error',
    text: ({ has }) => `the feeding hours have \`${has}\` only`,
    hint: () => 'write both, such as `feeding: {from: 06:00, to: 20:00}`',
  },
  'feeding-reversed': {
    level: 'error',
    text: ({ from, to }) => `the feeding hours end at ${to}, before they begin at ${from}`,
    hint: ({ from, to }) => `both are of one day: did you mean \`{from: ${to}, to: ${from}}\`?`,
  },
  'feeding-interval': {
    level: 'hint',
    text: ({ every, from, to, between }) =>
      `every ${every} makes one portion a day: from ${from} to ${to} are ${between}`,
    hint: () => 'young birds are fed often; write the hours between two portions, such as `every: 2 h`',
  },
  'sprout-hours': {
    level: 'error',
    text: ({ key, hours, most }) => `\`${key}: ${hours}\` is longer than seed stays good (${most} at most)`,
    hint: ({ key, usual }) => `usual is about \`${key}: ${usual}\``,
  },
  'names-together': {
    level: 'error',
    text: ({ names }) => `\`${names}\` would be one name for several`,
    hint: ({ names, name, list }) =>
      name === 'also'
        ? `write \`also: [${names}]\``
        : `where it is one of these, write \`${name}: [${list}]\``,
  },
  'bad-name': {
    level: 'error',
    text: ({ text }) => `\`${text}\` cannot be an id: it would be taken for something else`,
    hint: () =>
      'no /, no number alone, no e1 or c2, and none of cock, hen, both, all, some, hand, incubator, unknown',
  },
  'empty-list': { level: 'error', text: () => 'the list is empty', hint: () => 'say which, or leave it out' },
  'empty-map': {
    level: 'error',
    text: () => 'the braces are empty',
    hint: ({ example }) => `such as \`${example}\``,
  },
  'empty-text': {
    level: 'error',
    text: () => 'the quotes are empty',
    hint: () => 'write something, or leave the key out',
  },
  'unknown-word': {
    level: 'error',
    text: ({ word }) => `\`${word}\` is not a word known here`,
    hint: ({ suggestion, words }) => (suggestion ? `did you mean \`${suggestion}\`?` : `one of ${words}`),
  },
} as const satisfies Record<string, FindingKind>;
