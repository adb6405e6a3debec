/** The season whose every figure is worked out by hand in season-end-to-end.test.ts. */

const head = (pair: string) => `
  pair: ${pair}
  species: lavender waxbill
  cock: C-${pair}
  hen: H-${pair}
  log:`;

export const room = {
  'LW-1': `${head('LW-1')}
  - {date: 2026-03-01, clutch: 1, laid: 1}
  - {date: 2026-03-02, laid: 1}
  - {date: 2026-03-03, laid: 1}
  - {date: 2026-03-04, laid: 1, sitting}
  - {date: 2026-03-05, laid: 1}
  - {date: 2026-03-10, candled: {fertile: [e1, e2, e3, e4], clear: e5}}
  - {date: 2026-03-15, checked}
  - {date: 2026-03-16, hatched: [e1, e2, e3]}
  - {date: 2026-03-18, checked: {chicks: 3}}
  - {date: 2026-03-19, died: {cold: c3}}
  - {date: 2026-03-22, lost: {dead-in-shell: e4, clear: e5}}
  - {date: 2026-04-04, fledged: all}
  - {date: 2026-04-25, independent: all}
  - {date: 2026-05-10, clutch: 2, laid: 1}
  - {date: 2026-05-11, laid: 1}
  - {date: 2026-05-12, laid: 1}
  - {date: 2026-05-13, laid: 1, sitting}
  - {date: 2026-05-15, lost: {broken: e1}}
  - {date: 2026-05-19, candled: {fertile: [e2, e3], clear: e4}}
  - {date: 2026-05-20, fostered: {LW-2: e3}}
  - {date: 2026-05-25, hatched: e2}
  - {date: 2026-05-30, lost: {clear: e4}}
  - {date: 2026-06-13, fledged: c1}
  - {date: 2026-07-01, independent: c1}
  `,
  'LW-2': `${head('LW-2')}
  - {date: 2026-05-08, clutch: 1, laid: 1}
  - {date: 2026-05-09, laid: 1}
  - {date: 2026-05-10, laid: 1}
  - {date: 2026-05-11, laid: 1, sitting}
  - {date: 2026-05-17, candled: {fertile: [e1, e2], unsure: e3, clear: e4}}
  - {date: 2026-05-18, lost: {sold: e2}}
  - {date: 2026-05-22, checked}
  - {date: 2026-05-23, hatched: e1}
  - {date: 2026-05-25, hatched: LW-1/2/e3}
  - {date: 2026-05-26, died: {cold: c1}}
  - {date: 2026-06-01, lost: {addled: e3, clear: e4}}
  - {date: 2026-06-14, fledged: LW-1/2/c2}
  - {date: 2026-06-20, after: 2026-06-19, died: {window: LW-1/2/c2}}
  `,
  'LW-3': `${head('LW-3')}
  - {date: 2026-07-18, clutch: 1, laid: 1}
  - {date: 2026-07-19, laid: 1}
  - {date: 2026-07-20, laid: 1}
  - {date: 2026-07-21, laid: 1, sitting}
  - {date: 2026-07-27, candled: {fertile: [e1, e2], clear: [e3, e4]}}
  `,
  'LW-4': `${head('LW-4')}
  - {date: 2026-04-10, hatched: 2}
  - {date: 2026-04-29, fledged: all}
  - {date: 2026-05-05, gone: {sold: c1}}
  - {date: 2026-05-15, independent: c2}
  `,
};

/** The day on which it is looked back upon. */
export const ON = '2026-07-30';
