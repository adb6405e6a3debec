import { expect, test } from 'vitest';
import { schemaText } from '../../../src/report/schema/index.ts';

test('a schema names its draft and holds everything that it refers to', () => {
  const text = schemaText('pair');
  const schema = JSON.parse(text);
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  const referred = [...text.matchAll(/"\$ref": "#\/\$defs\/([\w-]+)"/g)].map((match) => match[1]);
  expect(referred.length).toBeGreaterThan(10);
  for (const name of referred) expect(schema.$defs).toHaveProperty(name as string);
  expect(text.endsWith('}\n')).toBe(true);
});
