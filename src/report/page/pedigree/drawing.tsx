import { formatDay } from '../../../days.ts';
import type { Ancestor } from '../../../rules/stock/lineage.ts';
import { stated } from '../../../words.ts';
import { periodText } from '../../terminal/dates.ts';
import { visible } from '../../terminal/visible.ts';
import { Figure } from '../figure.tsx';
import { Table } from '../table.tsx';
import { Ring } from '../whole.tsx';
import { GENERATIONS, type ParentsOf, type Place, pedigreeLayout } from './layout.ts';

const BOX = { width: 176, height: 40 };
const COLUMN = 198;
const ROW = 50;
/** Units that a text has in a box, and the size of the two lines. */
const INSIDE = BOX.width - 28;
const NAME = 13;
const BELOW = 11;

interface PedigreeParts {
  of: Ancestor;
  parentsOf: ParentsOf;
  /** F of an ancestor, in words. */
  inbreedingOf(one: Ancestor): string;
}

/** A bird's pedigree as a drawing, with the same as a table. Cocks have square corners, hens round ones. */
export function Pedigree({ of, parentsOf, inbreedingOf }: PedigreeParts) {
  const { places, rows } = pedigreeLayout(of, parentsOf);
  const known = places.filter(({ ancestor, generation }) => ancestor !== null && generation > 0).length;
  const generations = Math.max(...places.map(({ generation }) => generation));
  const again = places.some(({ times }) => times > 1);
  return (
    <div class="pedigree">
      <Figure
        title="Pedigree"
        says={`${visible(of.id)} with ${known} known ancestors in ${generations} of ${GENERATIONS} generations, sire above dam; the table has them all.`}
        width={GENERATIONS * COLUMN + BOX.width + 2}
        height={rows * ROW}
        table={<PedigreeTable places={places} inbreedingOf={inbreedingOf} />}
      >
        {places.map((place) => (
          <Line place={place} />
        ))}
        {places.map((place) => (
          <Box place={place} />
        ))}
      </Figure>
      <p class="small quiet">
        Cocks have square corners, hens round ones; of a founder no parents are known.
        {again ? ' Whoever stands here more than once has a thick frame and the number of times.' : ''}
      </p>
    </div>
  );
}

const left = ({ generation }: Place) => 1 + generation * COLUMN;
const middle = (row: number) => row * ROW + ROW / 2;

function Line({ place }: { place: Place }) {
  if (place.childRow === null) return null;
  const x = left(place);
  const from = x - COLUMN + BOX.width;
  const turn = (from + x) / 2;
  return <path class="outline" d={`M${from} ${middle(place.childRow)}H${turn}V${middle(place.row)}H${x}`} />;
}

function Box({ place }: { place: Place }) {
  const { ancestor, role, doubt, founder, times } = place;
  const x = left(place);
  const y = middle(place.row) - BOX.height / 2;
  const hen = (ancestor?.bird?.sex ?? (role === 'dam' ? 'hen' : null)) === 'hen';
  const unknown = ancestor === null;
  const name = unknown ? `${role} unknown` : visible(ancestor.id);
  const count = times > 1 ? ` ×${times}` : '';
  const more = unknown ? doubt : (ringOf(ancestor) ?? hatchedOf(ancestor));
  const second = [founder && place.generation > 0 ? 'founder' : null, more === null ? null : visible(more)];
  const below = stated(second);
  return (
    <g class={unknown ? 'unknown' : times > 1 ? 'again' : 'known'}>
      <rect x={x} y={y} width={BOX.width} height={BOX.height} rx={hen ? BOX.height / 2 : 2} />
      <text x={x + 16} y={y + (below === '' ? 25 : 17)} class="name">
        {fitted(name, INSIDE - NAME * count.length, NAME) + count}
      </text>
      {below === '' ? null : (
        <text x={x + 16} y={y + 32} class="below">
          {fitted(below, INSIDE, BELOW)}
        </text>
      )}
    </g>
  );
}

/** As much of a text as has room, by the width that its letters have at the most in common typefaces. */
function fitted(text: string, width: number, size: number): string {
  const letters = Array.from(text);
  let taken = 0;
  const fits = letters.findIndex((letter) => {
    taken += widthOf(letter) * size;
    return taken > width;
  });
  return fits === -1 ? text : `${letters.slice(0, Math.max(1, fits - 1)).join('')}…`;
}

/** In parts of the size of the letters; the widest of common typefaces without serifs (measured). */
function widthOf(letter: string): number {
  if (/[\sfijlrt.,·/'()-]/.test(letter)) return 0.45;
  return /[\p{Ll}\d]/u.test(letter) && !/[mw]/.test(letter) ? 0.68 : 1.15;
}

function ringOf({ bird, id }: Ancestor): string | null {
  const ring = bird?.ring ?? null;
  return ring === null || ring === id ? null : ring;
}

function hatchedOf({ bird }: Ancestor): string | null {
  return bird?.hatched ? `hatched ${formatDay(bird.hatched.to).slice(0, 4)}` : null;
}

function PedigreeTable({ places, inbreedingOf }: { places: Place[] } & Pick<PedigreeParts, 'inbreedingOf'>) {
  const rows = places
    .filter(({ generation }) => generation > 0)
    .map(({ kin, ancestor, doubt, founder, times }) => [
      kin,
      ancestor === null ? `not known${doubt === null ? '' : `: ${visible(doubt)}`}` : visible(ancestor.id),
      <Ring code={visible(ancestor?.bird?.ring ?? '')} />,
      ancestor?.bird?.hatched ? periodText(ancestor.bird.hatched, 0) : '',
      ancestor === null ? '' : inbreedingOf(ancestor),
      [founder ? 'founder' : '', times > 1 ? `stands here ${times} times` : ''].filter(Boolean).join(', '),
    ]);
  return (
    <Table caption="Ancestors" head={['', 'bird', 'ring', 'hatched', 'F', '']} rows={rows} right={[4]} />
  );
}

/** Rules of the drawing. On a phone it keeps a size that can be read, and is pushed aside with a finger. */
export const PEDIGREE_STYLE = `
.pedigree { break-inside: avoid; }
.pedigree figure { overflow-x: auto; }
.pedigree svg { min-width: 42rem; max-width: 100%; }
.pedigree rect { fill: var(--raised); stroke: var(--mark); stroke-width: 1.25; }
.pedigree .unknown rect { fill: none; stroke-dasharray: 4 3; }
.pedigree .again rect { stroke: var(--accent); stroke-width: 3.5; }
.pedigree text { font-size: 13px; }
.pedigree .name { font-weight: 600; }
.pedigree .below { font-size: 11px; fill: var(--quiet); }
.pedigree .unknown text { font-weight: 400; fill: var(--quiet); }
@media print { .pedigree svg { min-width: 0; } }
`;
