import { describe, expect, test } from 'vitest';
import { birdLog } from '../../src/journal/birds.ts';
import { pairLog } from '../../src/journal/pair-journal.ts';
import { lineOf } from '../../src/journal/print.ts';
import { entryOfWords } from '../../src/write/words.ts';
import { day } from '../rooms.ts';

const say = (
  words: string[],
  { note = null, grammar = pairLog }: { note?: string | null; grammar?: typeof pairLog } = {},
) => {
  const spoken = entryOfWords(words, { day: day('2026-03-04'), note, grammar });
  return 'wrong' in spoken ? spoken.wrong : lineOf(spoken.entry).replace('- {date: 2026-03-04, ', '{');
};

describe('words become an entry', () => {
  test.each([
    [['laid=1'], '{laid: 1}'],
    [['paired'], '{paired}'],
    [['paired='], '{paired}'],
    [['paired=flight 2'], '{paired: flight 2}'],
    [['laid=2', 'sitting'], '{laid: 2, sitting}'],
    [['candled.fertile=e1,e3', 'candled.clear=e2'], '{candled: {fertile: [e1, e3], clear: e2}}'],
    [['candled.fertile=[e1, e3]'], '{candled: {fertile: [e1, e3]}}'],
    [['hatched=BF-1/1/e1,BF-1/1/e2'], '{hatched: [BF-1/1/e1, BF-1/1/e2]}'],
    [['weighed.c1=4.5', 'weighed.c2=4.1'], '{weighed: {c1: 4.5, c2: 4.1}}'],
    [['weighed.2/c1=4.5'], '{weighed: {2/c1: 4.5}}'],
    [['aged.6=e1'], '{aged: {6: e1}}'],
    [['food=live food, egg food'], '{food: [live food, egg food]}'],
    [['food.live food=20'], '{food: {live food: 20}}'],
    [['died.not fed=c3'], '{died: {not fed: c3}}'],
    [['ringed.c1=ring:014'], '{ringed: {c1: ring:014}}'],
  ])('%j', (words, line) => {
    expect(say(words)).toBe(line);
  });
});

test('a comma stays one where the grammar takes words', () => {
  expect(say(['unwell.hen=fluffed, on the floor'])).toBe('{unwell: {hen: "fluffed, on the floor"}}');
  expect(say(['courting=he sang, she watched'])).toBe('{courting: "he sang, she watched"}');
  expect(say(['note=two, at noon', 'laid=2'])).toBe('{laid: 2, note: "two, at noon"}');
});

test('a decimal comma stays as it was typed, so that its reader can say what to write', () => {
  expect(say(['weighed.c1=4,5'])).toBe('{weighed: {c1: "4,5"}}');
});

test('the note may stand anywhere or be an option, and is written last', () => {
  expect(say(['note=said "so"', 'laid=1'])).toBe('{laid: 1, note: "said \\"so\\""}');
  expect(say(['laid=1'], { note: 'a = b' })).toBe('{laid: 1, note: "a = b"}');
});

test('circumstances come before what was seen', () => {
  expect(say(['laid=1', 'clutch=2', 'time=07:30'])).toBe(
    '{time: "07:30", clutch: 2, laid: 1}'.replaceAll('"', ''),
  );
});

test('the log of a bird takes a weight as it is', () => {
  expect(say(['weighed=8.4'], { grammar: birdLog })).toBe('{weighed: 8.4}');
});

test('what cannot become an entry is told with what would', () => {
  expect(say(['=1'])).toMatch(/`=1` is no observation; write it as laid=1/);
  expect(say(['two eggs'])).toMatch(/is no observation/);
  expect(say(['date=2026-03-01', 'laid=1'])).toBe('the day is given by --date 2026-03-01');
  expect(say(['candled.fertile', 'laid=1'])).toBe('`candled.fertile` lacks its value: `candled.fertile=…`');
  expect(say(['laid=1', 'laid=2'])).toMatch(/^`laid` is said twice/);
  expect(say(['candled.clear=e1', 'candled.clear=e2'])).toMatch(
    /^`candled.clear` is said twice; .*candled.clear=e1,e2/,
  );
  expect(say(['lost=1', 'lost.clear=e2'])).toMatch(/^`lost` is said twice/);
  expect(say(['note=a'], { note: 'b' })).toMatch(/^an entry has one note/);
});

describe('what a shell parted at its blanks is put together again', () => {
  test.each([
    [['laid', '1'], '`laid=1`'],
    [['laid:1'], '`laid=1`'],
    [['laid:', '1'], '`laid=1`'],
    [['moved=cage', '2'], '"moved=cage 2"'],
    [['note=sat', 'well,', 'tight'], '"note=sat well, tight"'],
    [['candled.fertile=e1', 'e3'], '`candled.fertile=e1,e3`'],
    [['candled.fertile=e1,', 'e3'], '`candled.fertile=e1,e3`'],
    [['2026-03-01', 'laid=1'], 'the day is given by --date 2026-03-01'],
    [['laid=1', 'date=1.3.'], 'the day is given by --date 2026-03-01'],
  ])('%j', (words, meant) => {
    expect(say(words)).toContain(meant);
  });
});

test('what keepers call a thing otherwise is left to the reader of the journal', () => {
  expect(say(['sitting', 'eggs'])).toBe('{sitting, eggs}');
});

test('a phone’s capitals are not written down', () => {
  expect(say(['Laid=1', 'Candled.clear=e2'])).toBe('{laid: 1, candled: {clear: e2}}');
});

test('a note says something, and there is one', () => {
  expect(say(['laid=1', 'note='])).toMatch(/^the note is empty/);
  expect(say(['note'])).toMatch(/^the note is empty/);
  expect(say(['note=a'], { note: 'b' })).toMatch(/one note/);
});
