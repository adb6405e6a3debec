import { describe, expect, it } from 'vitest';
import { wantsColor, widthOf } from '../../src/commands/terminal.ts';

const decide = (flag: boolean | undefined, environment: Record<string, string>, isTerminal = true) =>
  wantsColor({ flag, environment, isTerminal });

describe('colour', () => {
  it('is for terminals, not for pipes and files', () => {
    expect(decide(undefined, {}, true)).toBe(true);
    expect(decide(undefined, {}, false)).toBe(false);
  });

  it('follows the flag before anything else', () => {
    expect(decide(true, { NO_COLOR: '1', TERM: 'dumb' }, false)).toBe(true);
    expect(decide(false, { FORCE_COLOR: '3' })).toBe(false);
  });

  it('follows FORCE_COLOR before NO_COLOR', () => {
    expect(decide(undefined, { FORCE_COLOR: '1', NO_COLOR: '1' }, false)).toBe(true);
    expect(decide(undefined, { FORCE_COLOR: '', NO_COLOR: '1' }, false)).toBe(true);
    expect(decide(undefined, { FORCE_COLOR: '0' })).toBe(false);
    expect(decide(undefined, { FORCE_COLOR: 'false' })).toBe(false);
  });

  // https://no-color.org: "when present and not an empty string (regardless of its value)"
  it('stays away with a NO_COLOR of any value that is not empty', () => {
    expect(decide(undefined, { NO_COLOR: '0' })).toBe(false);
    expect(decide(undefined, { NO_COLOR: '' })).toBe(true);
  });

  it('stays away from a dumb terminal, unless forced', () => {
    expect(decide(undefined, { TERM: 'dumb' })).toBe(false);
    expect(decide(undefined, { TERM: 'dumb', FORCE_COLOR: '1' })).toBe(true);
  });
});

describe('width', () => {
  it('is COLUMNS, else what the stream says, else 80', () => {
    expect(widthOf({ environment: { COLUMNS: '120' }, columns: 100 })).toBe(120);
    expect(widthOf({ environment: {}, columns: 100 })).toBe(100);
    expect(widthOf({ environment: {}, columns: undefined })).toBe(80);
  });

  it.each(['', '0', '-3', 'wide', '12.5'])('does not take COLUMNS=%s', (COLUMNS) => {
    expect(widthOf({ environment: { COLUMNS }, columns: undefined })).toBe(80);
  });

  it('takes a stream of no columns for one that does not know', () => {
    expect(widthOf({ environment: {}, columns: 0 })).toBe(80);
  });
});
