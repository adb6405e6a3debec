import { expect, test } from 'vitest';
import { speciesSchema } from '../../../src/report/schema/species.ts';
import { traitKeys, traits } from '../../../src/species/traits.ts';

test('every trait of a profile has its words, and the unit that it is counted in', () => {
  const { properties = {} } = speciesSchema() as { properties?: Record<string, { description?: string }> };
  expect(Object.keys(properties)).toEqual([
    'species',
    'scientific',
    'also',
    ...traitKeys.map((key) => traits[key].name),
  ]);
  expect(properties.incubation?.description).toBe('days: a range such as 12-14, or one number');
  expect(properties['live-food']?.description).toBe('required, advised, helpful, no');
  expect(properties['sitting-from']?.description).toBe('egg: a range such as 12-14, or one number; or last');
});
