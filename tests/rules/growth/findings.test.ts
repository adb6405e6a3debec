import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/findings/codes.ts';
import { massFindings } from '../../../src/rules/growth/findings.ts';
import { room } from '../../rooms.ts';
import { hillFinches, THREE_CHICKS } from '../agenda/hill-finch.ts';

const masses = { 'adult-mass': '12', 'hatch-mass': '1' };

/** What is said of each, and what is offered to mend it. */
function said(log: string, but: Record<string, string> = masses, more = {}): string[] {
  const files = hillFinches(`${THREE_CHICKS}\n${log}`, but, more);
  return massFindings(room(files, '2026-04-01')).map((finding) => {
    const { level, text, hint } = kindOf(finding);
    return `${level}: ${text(finding.args)} | ${hint(finding.args)}`;
  });
}

describe('a weight that cannot be right', () => {
  it('of a chick says what is usual at its age, and where the decimal point may belong', () => {
    const [usual, ...others] = said('date: 2026-03-20, weighed: {c1: 35, c2: 3.2}');
    expect(others).toEqual([]);
    expect(usual).toMatch(
      /^hint: c1 at 35 g: 2\.\d–\d\.\d g is usual \(hill finch, 5 d old\); this weight is/,
    );
    expect(usual).toContain('weighed: {c1: 3.5}');
  });

  it('of 200 g or 0.2 g is nobody’s', () => {
    expect(said('date: 2026-03-20, weighed: {c1: 200, c2: 0.2}')).toHaveLength(2);
  });

  it('of an adult is measured by its own species', () => {
    const birds = {
      'birds.yaml': `
        birds:
          - {id: K1, species: hill finch, log: [{date: 2026-03-01, weighed: 1.21}, {date: 2026-03-02, weighed: 12.1}]}
      `,
    };
    expect(said('', masses, birds)).toEqual([
      expect.stringMatching(/^hint: K1 at 1\.21 g: about 12 g is usual \(hill finch\).*\{K1: 12\.1\}`$/),
    ]);
  });

  it('of an egg is measured by the chick that comes of it', () => {
    expect(said('date: 2026-03-05, weighed: {e4: 11}')).toEqual([
      expect.stringMatching(/^hint: e4 at 11 g: 1\.1–1\.4 g is usual \(hill finch egg\).*\{e4: 1\.1\}`$/),
    ]);
  });

  it('is not asked about where the profile has no mass', () => {
    expect(said('date: 2026-03-20, weighed: {c1: 200, c2: 0.2, e4: 11}', {})).toEqual([]);
  });
});

describe('a size that cannot be right', () => {
  it('is told by what the egg would weigh', () => {
    expect(said('date: 2026-03-05, measured: {e4: 162 x 118}')).toEqual([
      'hint: e4 of 162 x 118 mm would weigh 1200 g: 1.1–1.4 g is usual (hill finch egg); this size counts for nothing | a decimal point? `measured: {e4: 16.2 x 11.8}`',
    ]);
    expect(said('date: 2026-03-05, measured: {e4: 16.2 x 11.8}')).toEqual([]);
  });

  it('with one decimal point lost offers an example', () => {
    expect(said('date: 2026-03-05, measured: {e4: 16.2 x 118}')).toEqual([
      expect.stringContaining('length x breadth in mm, with a decimal point'),
    ]);
  });
});
