import type * as z from 'zod';

/** A JSON Schema, draft 2020-12. */
export type Schema = z.core.JSONSchema.BaseSchema;
