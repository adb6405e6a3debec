import { expect, test } from 'vitest';
import { schemaFile, schemaLine } from '../../src/journal/schema-files.ts';

test('a file names its schema by the way from its own folder', () => {
  expect(schemaFile('birds')).toBe('.nestlog/birds.schema.json');
  expect(schemaLine('birds', 'birds.yaml')).toBe(
    '# yaml-language-server: $schema=.nestlog/birds.schema.json',
  );
  expect(schemaLine('pair', 'pairs/waxbills/LW-1.yaml')).toBe(
    '# yaml-language-server: $schema=../../.nestlog/pair.schema.json',
  );
});
