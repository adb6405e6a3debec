import { mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * A journal of 50 MB, which takes no room on the disk.
 * @param {string} room
 */
export default function make(room) {
  mkdirSync(join(room, 'pairs'), { recursive: true });
  const journal = join(room, 'pairs/lw-1.yaml');
  writeFileSync(journal, 'pair: LW-1\n');
  truncateSync(journal, 50 * 1024 * 1024);
}
