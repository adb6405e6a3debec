import { formatDay } from '../../days.ts';
import type { Anchor } from './anchors.ts';

/** What sets those apart who came later than the others of their nest: their own day. */
export function latecomers({ who, span }: Anchor): string | null {
  return who === null ? null : formatDay(span.to);
}
