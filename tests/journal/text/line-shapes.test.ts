import { describe, expect, it } from 'vitest';
import { isMap, parseDocument } from 'yaml';
import { CONFLICT_MARK, DASH, DOCUMENT_MARK, KEY } from '../../../src/journal/text/line-shapes.ts';

describe('a line of YAML', () => {
  it.each(['---', '--- # next', '...\r', '---\t'])('%j parts documents', (line) => {
    expect(DOCUMENT_MARK.test(line)).toBe(true);
  });

  it.each(['----', '--- no'.slice(1), '..', ' ---'])('%j parts none', (line) => {
    expect(DOCUMENT_MARK.test(line)).toBe(false);
  });

  it('of a conflict is as git writes it: seven signs, and a blank or nothing behind them', () => {
    expect(
      ['<<<<<<< HEAD', '=======', '||||||| base', '>>>>>>> theirs\r'].every((one) => CONFLICT_MARK.test(one)),
    ).toBe(true);
    expect(['<<<<<<', '======== ', '=======x'].some((one) => CONFLICT_MARK.test(one))).toBe(false);
  });

  it.each(['- a', '  -', '\t- {date: 2026-03-01}', '-\r'])('%j is an item', (line) => {
    expect(DASH.test(line)).toBe(true);
  });

  it('-1 is no item', () => {
    expect(DASH.test('-1')).toBe(false);
  });

  it.each([
    ['log:', 'log'],
    ['  nest-looks: never', 'nest-looks'],
    ['"pair": LW-1', 'pair'],
    ["'room log' : x", 'room log'],
  ])('%j has the key %s, as the library reads it', (line, key) => {
    expect(KEY.exec(line)?.[2]).toBe(key);
    const { contents } = parseDocument(line);
    expect(isMap(contents) && String(contents.items[0]?.key)).toBe(key);
  });

  it.each(['http://example', 'a:b', ': x', '- log:'])('%j has none', (line) => {
    expect(KEY.test(line)).toBe(false);
  });
});
