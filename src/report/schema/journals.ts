import { birdKeys, birdLog } from '../../journal/birds.ts';
import { pairKeys, pairLog } from '../../journal/pair-journal.ts';
import { routineKeys } from '../../journal/routines.ts';
import { ringKeys, roomLog, settingsKeys } from '../../journal/settings.ts';
import { listSchema, logSchema, optionalKeys } from './keys.ts';
import type { Schema } from './schema.ts';

/** A pair's journal, `pairs/**`. */
export function pairSchema(): Schema {
  return {
    title: 'a pair’s journal',
    type: 'object',
    required: ['pair'],
    properties: { ...optionalKeys(pairKeys), log: logSchema(pairLog) },
    additionalProperties: false,
  };
}

/** The stock, `birds.yaml`. */
export function birdsSchema(): Schema {
  const bird: Schema = {
    type: 'object',
    anyOf: ['id', 'is', 'ring'].map((name) => ({ required: [name] })),
    properties: { ...optionalKeys(birdKeys), log: logSchema(birdLog) },
    additionalProperties: false,
  };
  const example = [{ id: 'LW-19-04', species: 'lavender waxbill', sex: 'cock' }];
  return {
    title: 'the stock',
    type: ['object', 'null'],
    properties: { birds: listSchema(bird, 'birds that came from outside, and adults’ lives', example) },
    additionalProperties: false,
  };
}

/** The room's settings, `nestlog.yaml`. */
export function roomSchema(): Schema {
  const routine: Schema = {
    type: 'object',
    required: ['name'],
    anyOf: [{ required: ['after'] }, { required: ['every'] }],
    properties: optionalKeys(routineKeys),
    additionalProperties: false,
  };
  const ring: Schema = {
    type: 'object',
    required: ['mm', 'in-hand'],
    properties: optionalKeys(ringKeys),
    additionalProperties: false,
  };
  return {
    title: 'the room',
    type: ['object', 'null'],
    properties: {
      ...optionalKeys(settingsKeys),
      routines: listSchema(routine, 'tasks of your own', [{ name: 'calcium', after: 'paired', days: 3 }]),
      rings: listSchema(ring, 'closed rings in the drawer', [{ mm: 2.3, 'in-hand': 12 }]),
      log: logSchema(roomLog),
    },
    additionalProperties: false,
  };
}
