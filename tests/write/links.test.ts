import { expect, it } from 'vitest';
import { knowsNoLinks } from '../../src/write/links.ts';

const failed = (code: string) => Object.assign(new Error('no link'), { code });

it('a card or a network drive that knows no links is told from a name that is taken or a full disk', () => {
  expect(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EINVAL'].map(failed).every(knowsNoLinks)).toBe(true);
  expect(['EEXIST', 'ENOSPC', 'EACCES'].map(failed).some(knowsNoLinks)).toBe(false);
  expect(knowsNoLinks(new Error('odd'))).toBe(false);
});
