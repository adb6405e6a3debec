import { expect, it } from 'vitest';
import { intoOption } from '../../src/commands/into.ts';

const { parse, description } = intoOption('pair');

it('a folder below pairs/ is named from there', () => {
  expect(description).toBe('pair: folder below pairs/ of the room');
  expect(parse?.('waxbills/small')).toBe('waxbills/small');
  expect(parse?.('waxbills\\small/')).toBe('waxbills/small');
  expect(parse?.('pairs/old')).toBe('old');
});

it.each(['../elsewhere', '/tmp', '.git', 'C:\\birds', '', '.'])('`%s` is none', (folder) => {
  expect(() => parse?.(folder)).toThrow('--into takes a folder below pairs/');
});
