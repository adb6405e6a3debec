/** Loaded before the program: the machine's clock stands at `NESTLOG_TEST_CLOCK`. */
const moment = Date.parse(process.env.NESTLOG_TEST_CLOCK ?? '');
globalThis.Date = new Proxy(Date, {
  construct: (date, given) => Reflect.construct(date, given.length > 0 ? given : [moment]),
  get: (date, key) => (key === 'now' ? () => moment : Reflect.get(date, key)),
});
