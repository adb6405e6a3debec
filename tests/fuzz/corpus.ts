import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

export interface TextFile {
  path: string;
  text: string;
}

/** Small rooms to make slips in: the journals of the example room one by one, and every room of the findings. */
export function corpus(root: string): TextFile[][] {
  const example = filesBelow(join(root, 'journals-example'));
  const shared = example.filter(({ path }) => !path.startsWith('pairs/'));
  const alone = example
    .filter(({ path }) => path.startsWith('pairs/'))
    .map((journal) => [...shared, journal]);
  const galleries = readdirSync(join(root, 'tests/findings'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => filesBelow(join(root, 'tests/findings', name)))
    .filter((files) => files.length > 0);
  return [...alone, ...galleries];
}

function filesBelow(folder: string): TextFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.ya?ml$/.test(entry.name))
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort()
    .map((file) => ({
      path: relative(folder, file).replaceAll('\\', '/'),
      text: readFileSync(file, 'utf8'),
    }));
}
