import { expect, test } from 'vitest';
import { birdObservations } from '../../../src/journal/bird-observations/index.ts';
import { observations } from '../../../src/journal/observations/index.ts';
import { birdsSchema, pairSchema, roomSchema } from '../../../src/report/schema/journals.ts';

/** The keys that an entry of the log below these steps may have. */
function entryKeys(schema: unknown, ...steps: string[]): string[] {
  let here = schema as Record<string, unknown>;
  for (const step of [...steps, 'log', 'items', 'properties']) {
    here = (step === 'log' ? (here.properties as Record<string, unknown>).log : here[step]) as Record<
      string,
      unknown
    >;
  }
  return Object.keys(here);
}

test('a pair’s log knows every observation', () => {
  expect(entryKeys(pairSchema())).toEqual(
    expect.arrayContaining([...Object.keys(observations), 'date', 'time', 'after', 'clutch', 'site', 'note']),
  );
});

test('a bird’s log knows those of birds', () => {
  expect(entryKeys(birdsSchema(), 'properties', 'birds', 'items')).toEqual([
    'date',
    'time',
    'note',
    ...Object.keys(birdObservations),
  ]);
});

test('the room’s log knows what happens to all of it', () => {
  expect(entryKeys(roomSchema())).toEqual(['date', 'time', 'note', 'done', 'food']);
  expect(Object.keys(roomSchema().properties ?? {})).toEqual(
    expect.arrayContaining(['routines', 'rings', 'limits']),
  );
});
