import { codeOf } from '../journal/system-error.ts';

const CODES = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EINVAL'];

/** Whether making a link failed because the disk knows none, as those of cards and of some networks. */
export function knowsNoLinks(error: unknown): boolean {
  return CODES.includes(codeOf(error));
}
