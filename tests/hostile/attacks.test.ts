import { expect, test } from 'vitest';
import { attacks } from './attacks.ts';
import { hostileRoom } from './room.ts';

test.each(attacks)('$tried', ({ files, expects }) => {
  const room = hostileRoom(files);
  expects(room);
  const { status, stdout, stderr } = room.nestlog('due');
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/hatching expected +OK-1/);
});
