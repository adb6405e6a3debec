import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/findings/codes.ts';
import { readFile } from '../../../src/journal/record.ts';
import { read, readLog } from '../reading.ts';

const LOG = 'log:\n  - {date: 2026-03-01, paired}\n';

describe('keys of a header', () => {
  it('are unknown with the one that was probably meant', () => {
    const { found, fixes } = read(`pair: LW-1\nhousng: flight 2\nNest_Looks: never\ncolour: blue\n${LOG}`);
    expect(found).toEqual(['2:1 unknown-key', '3:1 read-as', '4:1 unknown-key']);
    expect(fixes.slice(0, 2)).toEqual(['did you mean `housing`?', 'write `nest-looks`']);
    expect(fixes[2]).toContain('there are pair, species, cock, hen');
  });

  it('count once; what stands first holds', () => {
    const { found, said, journal } = read(`pair: LW-1\nhousing: flight 2\nhousing: flight 3\n${LOG}`);
    expect(found).toEqual(['3:1 duplicate-key']);
    expect(said).toEqual(['`housing` stands here twice; only the first one counts']);
    expect(journal.housing?.text).toBe('flight 2');
  });

  it('say nothing when empty', () => {
    expect(read(`pair: LW-1\ncock:\nhousing: # later\n${LOG}`)).toMatchObject({
      found: [],
      journal: { cock: [], housing: null },
    });
  });

  it('with a wrong value leave the others alone', () => {
    const { found, journal } = read(`pair: LW-1\nhousing: [a]\nnest-looks: nevr\nspecies: canary\n${LOG}`);
    expect(found).toEqual(['2:10 wrong-value', '3:13 unknown-word']);
    expect(journal).toMatchObject({ housing: null, nestLooks: null, species: { text: 'canary' } });
  });

  it('need a blank behind their colon', () => {
    const { found, fixes } = read(
      'pair: LW-1\nlog:\n  - {date: 2026-03-01, laid:1}\n  - {date:2026-03-01, laid: 1}\n',
    );
    expect(found).toEqual(['3:24 colon-without-blank', '4:6 colon-without-blank']);
    expect(fixes).toEqual(['write `laid: 1`', 'write `date: 2026-03-01`']);
  });
});

it('a key that belongs under another is answered with an example of that', () => {
  const { findings } = readFile('nestlog.yaml', 'room: x\nquarantine: 40\n');
  expect(findings.map((finding) => kindOf(finding).hint(finding.args))).toEqual([
    'did you mean `limits: {quarantine: 30, clutches-per-year: 3, max-inbreeding: 0.125}`?',
  ]);
});

it('a key that holds its own value is told apart from it', () => {
  expect(readLog('- {date: 2026-03-07, laid 1, checked}').fixes).toEqual(['did you mean `laid: 1`?']);
  expect(readLog('- {date: 2026-03-07, laid=1}').fixes).toEqual(['did you mean `laid: 1`?']);
  expect(readLog('- {date: 2026-03-07, laid = 1}').fixes).toEqual(['did you mean `laid: 1`?']);
});

it.each(['moved to flight 3', 'moved into flight 3'])('`%s` names the housing alone', (said) => {
  expect(readLog(`- {date: 2026-03-07, ${said}}`).fixes).toEqual(['did you mean `moved: flight 3`?']);
});

it('words alone behind a key are its value, though they name another', () => {
  expect(readLog('- {date: 2026-03-07, site nest}').fixes).toEqual(['did you mean `site: nest`?']);
});
