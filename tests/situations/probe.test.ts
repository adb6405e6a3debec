import { it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { day, type Files, room } from '../rooms.ts';
import { codes, due, journal, morning, waxbills } from './morning.ts';
function show(name: string, files: Files, from: string, to: string) {
  console.log(`## ${name} ${codes(room(files, to)).join()}`);
  for (let on = day(from); on <= day(to); on++) {
    const o = formatDay(on);
    console.log(o.slice(5), due(files, o).join('; '), '|', morning(files, o).map((w) => `${w.kind}:${w.level}:${w.pair ?? w.bird}`).join('; '));
  }
}
it('x', () => {
  show('foster', {
    a: waxbills(`date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1
      date: 2026-03-04, laid: 1, sitting
      date: 2026-03-07, fostered: {BF-1: all}
      date: 2026-03-27, feeding: {both: all}`, 'housing: cage 1').replace(/\n.*feeding.*/, ''),
    b: journal('BF-1', 'bengalese finch', `date: 2026-03-03, laid: 1
      date: 2026-03-05, laid: 2, sitting
      date: 2026-03-16, hatched: [LW-1/1/e1, LW-1/1/e2]
      date: 2026-03-24, fostered: {LW-1: [LW-1/1/c1, LW-1/1/c2]}`, 'housing: cage 2'),
  }, '2026-03-06', '2026-03-30');
  show('dummies', { a: waxbills(`date: 2026-03-01, laid: 1, pulled: e1
      date: 2026-03-02, laid: 1, pulled: e2
      date: 2026-03-03, laid: 1, pulled: e3`) }, '2026-03-03', '2026-03-12');
  show('dummies set', { a: waxbills(`date: 2026-03-01, laid: 1, pulled: e1
      date: 2026-03-02, laid: 1, pulled: e2
      date: 2026-03-03, laid: 1, pulled: e3
      date: 2026-03-04, laid: 1, set: all, sitting`) }, '2026-03-04', '2026-03-22');
  show('incubator', { a: waxbills(`date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1, pulled: all
      date: 2026-03-05, set: {incubator: all}`) }, '2026-03-04', '2026-03-22');
  show('never', { a: waxbills(`date: 2026-02-20, paired
      date: 2026-03-04, sitting: hen
      date: 2026-03-16, heard: begging
      date: 2026-04-04, fledged: 3`, 'nest-looks: never') }, '2026-03-04', '2026-04-12');
  show('late', { a: waxbills(`date: 2026-03-20, checked: {chicks: 3}
      date: 2026-03-20, aged: {6: all}`) }, '2026-03-20', '2026-03-30');
  show('late2', { a: waxbills('date: 2026-03-20, hatched: 3, aged: {6: all}') }, '2026-03-20', '2026-03-30');
  show('onoff', { a: waxbills(`date: 2026-03-01, laid: 1
      date: 2026-03-04, laid: 3, sitting
      date: 2026-03-05, time: 08:00, sitting: off
      date: 2026-03-05, time: 18:00, sitting
      date: 2026-03-07, time: 08:00, sitting: off
      date: 2026-03-07, time: 18:00, sitting: off
      date: 2026-03-08, sitting`) }, '2026-03-05', '2026-03-10');
  show('budgie', { a: journal('B-1', 'budgerigar', `date: 2026-03-01, laid: 1, sitting: hen
      date: 2026-03-03, laid: 1
      date: 2026-03-05, laid: 1
      date: 2026-03-07, laid: 1
      date: 2026-03-19, hatched: e1
      date: 2026-03-21, hatched: e2
      date: 2026-03-23, hatched: e3
      date: 2026-03-25, hatched: e4`) }, '2026-03-01', '2026-04-02');
});
