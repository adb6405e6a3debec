import { isError } from '../findings/codes.ts';
import type { Room } from '../room/fold.ts';
import type { Context } from './context.ts';

/** Where findings are not shown themselves: says that what some lines of the journals say is missing. */
export function tellUnread({ stderr }: Pick<Context, 'stderr'>, { findings }: Pick<Room, 'findings'>): void {
  const errors = findings.filter(isError).length;
  if (errors === 0) return;
  const [how, what] = errors === 1 ? ['1 error', 'that line says'] : [`${errors} errors`, 'those lines say'];
  stderr.write(
    `nestlog: ${how} in the journals: what ${what} may be missing here; \`nestlog check\` shows more\n`,
  );
}
