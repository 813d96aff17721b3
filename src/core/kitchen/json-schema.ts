import { z } from 'zod'
import { kitchenSchema } from './schema'

/** The shape of the kitchen file as JSON Schema (draft 2020-12), for editors that help to type one. */
export function kitchenJsonSchema(): object {
  return {
    ...z.toJSONSchema(kitchenSchema, { io: 'input', target: 'draft-2020-12', reused: 'ref' }),
    title: 'Dry Run kitchen file, version 1',
  }
}
