import { expect, it } from 'vitest';
import * as z from 'zod';
import { refuse } from '../../../src/journal/grammar/issue.ts';

it('carries the finding through zod', () => {
  const at = { file: 'a', line: 1, column: 2, length: 3 };
  const schema = z.string().transform((_, context) => refuse(context, at, 'not-a-count', { text: 'x' }));
  const [issue] = schema.safeParse('x').error?.issues ?? [];
  expect(issue).toMatchObject({ code: 'custom', params: { code: 'not-a-count', args: { text: 'x' }, at } });
});
