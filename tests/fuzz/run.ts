import { slippedRooms, tryRooms, writtenRooms } from './slips.ts';

/** One chunk of the fuzzing, three of four rooms with slips, and what came of it as lines. */
export function run(root: string, runs: number, seed: number): string[] {
  const few = Math.floor(runs / 4);
  return [
    ...told('real journals with slips', slippedRooms(root), runs - few, seed),
    ...told('rooms written line by line', writtenRooms, few, seed),
  ];
}

/** Of this process alone: what else the machine does at night is no slowness of ours. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function told(name: string, trials: Parameters<typeof tryRooms>[0], runs: number, seed: number): string[] {
  const outcome = tryRooms(trials, { runs, seed, clock: processorTime });
  const { broken, slowest } = outcome;
  const line = `${outcome.runs} ${name}, seed ${seed}; the slowest took ${Math.round(slowest)} ms`;
  if (broken === null) return [`${line}: every law held`];
  const files = broken.files.flatMap(({ path, text }) => [`--- ${path}`, text]);
  return [...files, '---', broken.why, `${line}: BROKEN`];
}
