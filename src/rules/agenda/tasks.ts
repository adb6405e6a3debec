import { birdTaskWords } from './bird-tasks.ts';
import type { TaskWords } from './item.ts';
import { milestones } from './milestones.ts';

/** Every shipped task in words, each once, in the order of a brood's life and then of a bird's. */
export const taskWords: readonly TaskWords[] = [
  ...new Map([...milestones, ...Object.values(birdTaskWords)].map((words) => [words.task, words])).values(),
];
