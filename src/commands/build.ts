/** Changes with everything that is compiled into the program; set by the build. */
declare const NESTLOG_BUILD: string | undefined;

/** Names the program that this is, for what it keeps between runs. */
export const build = typeof NESTLOG_BUILD === 'string' ? NESTLOG_BUILD : 'not built';
