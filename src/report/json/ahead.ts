import { formatDay } from '../../days.ts';
import type { Basis, StepShare } from '../../rules/ahead/ahead.ts';
import type { Leaving } from '../../rules/ahead/housing/leaving.ts';
import type { WeanedPlace } from '../../rules/ahead/housing/weaned-place.ts';
import type { ComingRest } from '../../rules/ahead/rest.ts';
import type { RingSize, Rings } from '../../rules/ahead/rings.ts';
import type { SpeciesYoung, Week, Young } from '../../rules/ahead/weeks.ts';
import type { AheadPage } from '../ahead.ts';
import { dayData, spanData } from './course.ts';
import { findingData } from './finding.ts';
import { jsonText } from './text.ts';

/** The weeks ahead for programs. An estimate is `{mean, low, high}`, its range the middle 80 %. */
export function aheadJson(page: AheadPage): string {
  const { day, room, until, eggs, chicks, clutches, housing } = page;
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    room,
    until: formatDay(until),
    draws: page.draws,
    eggs,
    chicks,
    clutches,
    weeks: page.weeks.map(weekData),
    before: youngData(page.before),
    total: youngData(page.total),
    species: page.species.map(speciesData),
    pastTheirTime: page.pastTheirTime,
    uncounted: page.uncounted,
    rings: ringsData(page.rings),
    housing: {
      place: housing.place === null ? null : placeData(housing.place),
      leaving: housing.leaving.map(leavingData),
      occupied: housing.occupied.map(({ mostOn, ...one }) => ({ ...one, mostOn: formatDay(mostOn) })),
      empty: housing.empty,
    },
    rest: page.rest.map(restData),
    birds: page.events.map(({ task, bird, species, housing: lives, from, why }) => ({
      task,
      bird,
      species,
      housing: lives,
      date: formatDay(from),
      why,
    })),
    basis: page.basis.map(basisData),
    findings: page.findings.map(findingData),
  });
}

function youngData({ hatching, fledging, independent }: Young) {
  return { hatching, fledging, independent };
}

function weekData({ year, week, from, to, ...young }: Week) {
  return { year, week, from: formatDay(from), to: formatDay(to), ...youngData(young) };
}

function speciesData({ species, eggs, chicks, clutches, weeks, ...young }: SpeciesYoung) {
  return { species, eggs, chicks, clutches, ...youngData(young), weeks: weeks.map(weekData) };
}

function ringsData({ wanted, lead, sooner, sizes, unused, tooOld }: Rings) {
  return {
    wanted,
    lead: lead.days,
    leadAssumed: lead.assumed,
    sooner,
    sizes: sizes.map(sizeData),
    unused,
    tooOld,
  };
}

function sizeData(size: RingSize) {
  const { mm, species, chicks, needed, inHand, order, first, orderBy, late, spare } = size;
  return {
    mm,
    species,
    chicks,
    needed,
    inHand,
    order,
    first: dayData(first),
    orderBy: dayData(orderBy),
    late: late === null ? null : { arrives: formatDay(late.arrives), tooLate: late.tooLate },
    spare,
  };
}

function placeData({ mostOn, weeks, ...place }: WeanedPlace) {
  return {
    ...place,
    mostOn: formatDay(mostOn),
    weeks: weeks.map(({ to, ...week }) => ({ ...week, to: formatDay(to) })),
  };
}

function leavingData({ days, nextHatch, ...leaving }: Leaving) {
  return { ...leaving, days: spanData(days), nextHatch: spanData(nextHatch) };
}

function restData({ from, free, ...rest }: ComingRest) {
  return { ...rest, from: dayData(from), free: formatDay(free) };
}

function basisData({ species, ...shares }: Basis) {
  const one = ({ mean, low, high, own }: StepShare) => ({ mean, low, high, ...own });
  return {
    species,
    fertility: one(shares.fertility),
    hatchOfFertile: one(shares.hatchOfFertile),
    fledge: one(shares.fledge),
    independence: one(shares.independence),
  };
}
