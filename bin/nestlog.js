#!/usr/bin/env node
// CommonJS, as the bundle is: starting Node's loader of ES modules would cost a quarter of the whole start.
const { existsSync } = require('node:fs');
const { homedir } = require('node:os');
const { join } = require('node:path');
/** @type {{ version: string }} */
const { version } = require('../package.json');

const words = process.argv.slice(2);
const bundle = join(__dirname, '../dist/nestlog.cjs');

process.on('uncaughtException', answerFor);
process.on('unhandledRejection', answerFor);

if (words[0] === '--version' || words[0] === '-V') {
  process.stdout.write(`${version}\n`);
} else if (!standsSomewhere()) {
  process.stderr.write(
    'nestlog: the folder that this terminal stands in is no longer there; go into another one.\n',
  );
  process.exitCode = 2;
} else if (existsSync(bundle)) {
  if (!answeredBefore()) require('./load.js')(bundle).main(words, version);
} else {
  process.stderr.write('nestlog: the program is not built yet; run `npm run build` in its folder first.\n');
  process.exitCode = 2;
}

/** A folder can be taken away under a terminal: with a stick, a share, or another branch of the records. */
function standsSomewhere() {
  try {
    return process.cwd() !== '';
  } catch {
    return false;
  }
}

/** Whether a small program of its own could give this morning's agenda again. */
function answeredBefore() {
  const early = join(__dirname, '../dist/early.cjs');
  return words.includes('due') && existsSync(early) && require(early).answer(words);
}

/**
 * For what no other place expected: a stream that takes no more, or a mistake of nestlog.
 * @param {unknown} error
 */
function answerFor(error) {
  const { code, syscall } = /** @type {NodeJS.ErrnoException} */ (error ?? {});
  // A reader that has seen enough, such as `head`, closes the pipe: that is no error.
  if (code === 'EPIPE') return;
  // Said once: where stderr takes nothing either, saying it fails in the same way.
  if (syscall === 'write' && process.exitCode === 2) return;
  process.exitCode = 2;
  if (syscall === 'write') process.stderr.write(`nestlog: its output could not be written (${code}).\n`);
  else apologise(error);
}

/** @param {unknown} error */
function apologise(error) {
  if (process.env.NESTLOG_DEBUG) {
    process.stderr.write(`${error instanceof Error ? error.stack : error}\n`);
    return;
  }
  const what = masked(String(error));
  const command = masked(['nestlog', ...words].join(' '));
  process.stderr.write(
    `nestlog ${version} met something it was not made for and stopped. This is a mistake in nestlog, not in your ` +
      `journals. Please report it with these words: "${what}", from "${command}" in ${masked(process.cwd())}. ` +
      'With NESTLOG_DEBUG=1 set it shows where in the program it happened.\n',
  );
}

/**
 * Without the keeper's name, and without control characters: an error's message may quote a journal.
 * @param {string} text
 */
function masked(text) {
  const home = homedir();
  return (home.length > 1 ? text.replaceAll(home, '~') : text).replace(/\p{C}+/gu, ' ');
}
