import { describe, expect, it } from 'vitest';
import { readLog } from '../reading.ts';

describe('a value that is not what its key takes', () => {
  it('is one finding, the most telling one', () => {
    const { findings } = readLog('- {date: 2026-03-01, lost: {stolen: 0, clear: -1}}');
    expect(findings.map(({ code, at }) => [code, at.column])).toEqual([['unknown-word', 31]]);
  });

  it('tells what the key takes where nothing else can be said', () => {
    const { findings, fixes } = readLog('- {date: 2026-03-01, candled: e1}');
    expect(findings[0]?.args).toMatchObject({ key: 'candled', takes: '{fertile, clear, dead, unsure: who}' });
    expect(fixes).toEqual(['such as `candled: {fertile: [e1, e3], clear: e2}`']);
  });

  it('points at its key where nothing stands behind it', () => {
    expect(readLog('- {date: 2026-03-01, laid}').found).toEqual(['3:24 wrong-value']);
  });

  it('in a list is the item', () => {
    expect(readLog('- {date: 2026-03-01, photo: [a.jpg, {b: c}]}').found).toEqual(['3:39 wrong-value']);
  });

  it('that was refused by itself is no second finding', () => {
    expect(readLog('- {date: 2026-03-01, laid: [e1, *x]}').found).toEqual(['3:35 yaml-feature']);
  });
});
