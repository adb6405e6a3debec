/** What is bundled, with its licence: `THIRD-PARTY.md` from the list of files that esbuild put into the bundle. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const PACKAGE = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//;
const LICENCE_FILE = /^(licen[cs]e|copying|notice)/i;

/**
 * The folders of the packages that some of these files belong to, sorted by name.
 * @param {string[]} files paths with forward slashes, relative to one place
 * @returns {string[]}
 */
export function packageFolders(files) {
  const folders = files.map((file) => PACKAGE.exec(file)?.[1]).filter((folder) => folder !== undefined);
  return [...new Set(folders)].sort();
}

/**
 * The page's text. A package without a licence file or a licence name is an error: it must not be bundled unseen.
 * @param {string[]} folders absolute
 * @returns {string}
 */
export function thirdPartyPage(folders) {
  const parts = folders.map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const files = readdirSync(folder).filter((file) => LICENCE_FILE.test(file));
    if (!license || files.length === 0)
      throw new Error(`${name} ${version} is bundled but carries no licence`);
    const texts = files.map((file) =>
      readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim(),
    );
    return `## ${name} ${version}\n\n${license}\n\n${texts.map((text) => `\`\`\`text\n${text}\n\`\`\`\n`).join('\n')}`;
  });
  const intro = '# Third-party software\n\nnestlog is delivered as one file that contains these packages.\n';
  return [intro, ...parts].join('\n');
}
