/** Small pictures made of text, for where looking beats reading. All of plain characters, one column each. */

const EIGHTHS = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];
const STEPS = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];

/** A bar that fills a share of the width. What is not nothing shows at least a sliver. */
export function bar(share: number, width: number): string {
  const eighths = Math.max(share > 0 ? 1 : 0, Math.round(share * width * 8));
  return '█'.repeat(Math.floor(eighths / 8)) + (EIGHTHS[eighths % 8] ?? '');
}

/** A rate between 0 and 1 with its interval: `··├──●───┤····`. */
export function intervalBar(
  { low, rate, high }: { low: number; rate: number; high: number },
  width: number,
): string {
  const at = (share: number) => Math.min(width - 1, Math.max(0, Math.round(share * (width - 1))));
  const cells: string[] = Array.from({ length: width }, (_, i) =>
    i >= at(low) && i <= at(high) ? '─' : '·',
  );
  cells[at(low)] = '├';
  cells[at(high)] = '┤';
  cells[at(rate)] = '●';
  return cells.join('');
}

interface StepPlot {
  /** The last value on the axis of ages. */
  to: number;
  width: number;
  height: number;
}

/** A survival curve as columns of the share left at each age, with its axes. */
export function stepPlot(
  steps: readonly { time: number; surviving: number }[],
  { to, width, height }: StepPlot,
): string[] {
  const columns = Math.max(1, Math.min(width - 7, to + 1));
  const ages = Array.from({ length: columns }, (_, i) => Math.round((i * to) / Math.max(1, columns - 1)));
  const levels = ages.map((age) => {
    const left = steps.findLast(({ time }) => time <= age)?.surviving ?? 1;
    return Math.max(left > 0 ? 1 : 0, Math.round(left * height * 8));
  });
  const rows = Array.from({ length: height }, (_, i) => {
    const floor = (height - 1 - i) * 8;
    const label = i === 0 ? '100 %' : 2 * i === height ? ' 50 %' : '     ';
    return `${label} ${levels.map((level) => STEPS[Math.min(8, Math.max(0, level - floor))]).join('')}`.trimEnd();
  });
  return [...rows, `  0 % ${'─'.repeat(columns)}`, `      ${ageAxis(ages)}`];
}

/** `0        10        20`: an age under its own column, each ten, or each five where there is room. */
function ageAxis(ages: readonly number[]): string {
  let axis = '';
  ages.forEach((age, i) => {
    if (age % 10 === 0 && i >= axis.length + (axis === '' ? 0 : 1)) axis = `${axis.padEnd(i)}${age}`;
  });
  return `${axis} d`;
}
