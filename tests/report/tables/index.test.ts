import { expect, it } from 'vitest';
import { formats } from '../../../src/report/tables/index.ts';

it('every form of a table ends with a line end', () => {
  const table = { name: 'birds', columns: ['id'], rows: [{ id: 'x' }] };
  expect(Object.keys(formats)).toEqual(['csv', 'json', 'ndjson']);
  for (const text of Object.values(formats)) expect([...text(table)].join('')).toMatch(/\n$/);
});
