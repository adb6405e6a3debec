import { describe, expect, it } from 'vitest';
import { room } from '../../rooms.ts';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const heads = 'hen: LW-20-11\ncock: LW-20-01';
const files = (log: string) => ({ 'LW-1': waxbills(log, heads) });

describe('a bird that is unwell', () => {
  it('is for an avian vet to judge: seven days after the last line about it', () => {
    const room = files(
      'date: 2026-11-03, unwell: {cock: quieter than usual}\n date: 2026-11-05, unwell: {cock: off his food}',
    );
    expect(spell(room, 'unwell', '2026-11-01', '2026-11-30')).toEqual(['11-03 … 11-12 watch']);
    const { text, check } = line(room, 'unwell', '2026-11-06');
    expect(text).toBe(
      'LW-20-01: “off his food” on 5 Nov. An ill bird hides it as long as it can, so what is seen is late.',
    );
    expect(check).toBe('warm, quiet, apart; does it eat? An avian vet says what it is');
  });

  it.each(['fluffed', 'on the floor', 'breathing hard', 'tail bobbing', 'bleeding from a claw'])(
    '%s presses on that day and the next',
    (words) => {
      const room = files(`date: 2026-11-03, unwell: {cock: ${words}}`);
      expect(spell(room, 'unwell', '2026-11-01', '2026-11-30')).toEqual([
        '11-03 … 11-04 act',
        '11-05 … 11-10 watch',
      ]);
    },
  );

  it('presses still on the day after, though less was seen of it by then', () => {
    const room = files(
      'date: 2026-11-03, unwell: {cock: fluffed}\n date: 2026-11-04, unwell: {cock: off his food}',
    );
    expect(spell(room, 'unwell', '2026-11-01', '2026-11-05')).toEqual(['11-03 … 11-04 act', '11-05 watch']);
  });

  it('is over when it is well again, dead or gone', () => {
    for (const end of ['unwell: {cock: well again}', 'died: cock', 'gone: {given: cock}']) {
      const room = files(`date: 2026-11-03, unwell: {cock: fluffed}\n date: 2026-11-04, ${end}`);
      expect(spell(room, 'unwell', '2026-11-01', '2026-11-30'), end).toEqual(['11-03 act']);
    }
  });

  it('in treatment is watched', () => {
    const room = files(
      'date: 2026-11-03, unwell: {cock: fluffed}\n date: 2026-11-03, treated: {cock: as the vet ordered}',
    );
    expect(spell(room, 'unwell', '2026-11-01', '2026-11-30')).toEqual(['11-03 … 11-10 watch']);
    const { text, check } = line(room, 'unwell', '2026-11-04');
    expect(text).toContain('In treatment since 3 Nov.');
    expect(check).toBe('whether it gets better; if not, back to the avian vet');
  });

  it('presses anew where it is worse after the treatment began', () => {
    const room = files(
      'date: 2026-11-03, unwell: {cock: quiet}, treated: {cock: as the vet ordered}\n date: 2026-11-05, unwell: {cock: on the floor}',
    );
    expect(spell(room, 'unwell', '2026-11-01', '2026-11-08')).toEqual([
      '11-03 … 11-04 watch',
      '11-05 … 11-06 act',
      '11-07 … 11-08 watch',
    ]);
  });

  it('stays ill where two helpers of one day do not agree', () => {
    const room = files(
      'date: 2026-11-03, unwell: {cock: fluffed}\n date: 2026-11-03, unwell: {cock: well again}',
    );
    expect(line(room, 'unwell', '2026-11-03').text).toContain('“fluffed”');
  });

  // NASPHV Compendium 2010: psittacosis spreads by the dust of droppings.
  it('with signs of the breath is a caution for people too', () => {
    const breath = files('date: 2026-11-03, unwell: {cock: breathing with a click}');
    expect(line(breath, 'unwell', '2026-11-03').check).toMatch(/mask.*washed hands.*doctor.*psittacosis/);
    const leg = files('date: 2026-11-03, unwell: {cock: limps}');
    expect(line(leg, 'unwell', '2026-11-03').check).not.toContain('psittacosis');
  });

  it('is that caution also where one line tells of two, whichever of them breathed badly before', () => {
    for (const ill of ['cock', 'hen']) {
      const both = files(
        `date: 2026-11-03, unwell: {${ill}: sneezing}\n date: 2026-11-04, unwell: {cock: quiet, hen: quiet}`,
      );
      const { text, check } = line(both, 'unwell', '2026-11-05');
      expect(text).toContain('LW-20-01 and LW-20-11: “quiet”');
      expect(check, ill).toContain('psittacosis');
    }
  });

  it('of a whole brood is one line', () => {
    const room = files(`
      date: 2026-03-01, laid: 3
      date: 2026-03-14, hatched: 3
      date: 2026-03-18, unwell: {c1: pale and limp, c2: pale and limp, c3: pale and limp}`);
    expect(warned(room, 'unwell', '2026-03-18')).toMatchObject([{ level: 'act', pair: 'LW-1', bird: null }]);
    expect(line(room, 'unwell', '2026-03-18').text).toMatch(
      /^LW-1\/1\/c1, LW-1\/1\/c2 and LW-1\/1\/c3: “pale and limp”/,
    );
  });

  it('is a line of its own where another is ill in another way', () => {
    const room = files('date: 2026-11-03, unwell: {cock: off his food, hen: fluffed}');
    expect(
      warned(room, 'unwell', '2026-11-03').map(({ level, text }) => `${level} ${text.split(' on')[0]}`),
    ).toEqual(['act LW-20-11: “fluffed”', 'watch LW-20-01: “off his food”']);
  });

  it('never names a remedy', () => {
    const { text, check } = line(
      files('date: 2026-11-03, unwell: {cock: breathing hard}'),
      'unwell',
      '2026-11-03',
    );
    expect(`${text} ${check}`).not.toMatch(/antibiotic|dose|drops|\bmg\b|\bml\b/i);
  });
});

it('a comma in the words of a sick bird is an error beside them, and silences nothing', () => {
  const files = {
    P: pair(
      'A-1',
      "Peters' twinspot",
      'date: 2026-04-20, paired\ndate: 2026-05-02, unwell: {hen: sits on the floor, tail bobbing}',
      'cock: A\nhen: B',
    ),
  };
  expect(line(files, 'unwell', '2026-05-02')).toMatchObject({
    level: 'act',
    text: expect.stringContaining('“sits on the floor, tail bobbing”'),
  });
  expect(room(files, '2026-05-02').findings.map(({ code }) => code)).toContain('comma-in-map');
});
