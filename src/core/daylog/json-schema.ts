import { z } from 'zod'
import { dayLogSchema } from './schema'

/** The shape of the day log as JSON Schema (draft 2020-12). */
export function dayLogJsonSchema(): object {
  return {
    ...z.toJSONSchema(dayLogSchema, { io: 'input', target: 'draft-2020-12', reused: 'ref' }),
    title: 'Dry Run day log, version 1',
  }
}
