import { progressLine } from './cli/progress.ts';
import { answerPlace, today } from './cli/world.ts';
import type { Output } from './commands/context.ts';
import { commands } from './commands/index.ts';
import { runProgram } from './commands/program.ts';
import { wantsColor, widthOf } from './commands/terminal.ts';

/** Where a keeper waits and looks on. */
const progress = process.stderr.isTTY
  ? progressLine(
      (text) => void process.stderr.write(text),
      () => performance.now(),
    )
  : undefined;

function outputOf(stream: NodeJS.WriteStream, flag: boolean | undefined): Output {
  const environment = process.env;
  const { columns, isTTY } = stream;
  return {
    write: (text) => {
      progress?.clear();
      stream.write(text);
    },
    color: wantsColor({ flag, environment, isTerminal: isTTY === true }),
    width: widthOf({ environment, columns }),
  };
}

/**
 * Runs the program with the words after its name. The exit code is left in `process.exitCode`: leaving at once would
 * cut off what a pipe has not taken yet.
 */
export async function main(words: string[], version: string): Promise<void> {
  const code = await runProgram(commands, words, {
    version,
    environment: process.env,
    here: process.cwd(),
    today,
    answer: answerPlace(words),
    ...(progress === undefined ? {} : { progress: progress.tell }),
    stdout: (color) => outputOf(process.stdout, color),
    stderr: (color) => outputOf(process.stderr, color),
  });
  progress?.clear();
  // It is set by now if an output could not be written.
  process.exitCode ??= code;
}
