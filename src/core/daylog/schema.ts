import { z } from 'zod'
import { level, perTurn, type Stamped, tape } from '../kitchen/quantity'

/**
 * The day log, version 1: what was done, read and changed on the day, in order. It stands beside the kitchen file and
 * only grows: a wrong entry is set right by a `correct` entry, never taken out.
 */

export const LOG_FORMAT = 'dryrun-daylog'
export const LOG_VERSION = 1

const id = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'an id is small letters, figures and hyphens, at most 40 long')
const head = {
  id,
  at: z.string().max(40).optional().describe('When, as written by the device. Read by: sheets.'),
  by: z.string().max(100).optional().describe('Who. Read by: sheets.'),
}

const entry = z.discriminatedUnion('kind', [
  z.strictObject({
    ...head,
    kind: z.literal('done'),
    operation: z
      .string()
      .max(200)
      .describe('The operation that is finished, its checks answered. Read by: daylog/achieved.'),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('set'),
    unit: z.string().max(40).describe('Read by: daylog/achieved.'),
    edge: z
      .enum(['underside', 'top'])
      .describe('Which edge of the carcass was read. Read by: daylog/achieved.'),
    up: level().describe('Above the line. Read by: daylog/achieved.'),
    down: level().describe('Below the line. Read by: daylog/achieved.'),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('floor-at-foot'),
    unit: z.string().max(40).describe('Read by: daylog/achieved.'),
    foot: z.string().max(40).describe('Read by: daylog/achieved.'),
    drop: level().describe('Down from the line to the floor under this foot. Read by: daylog/achieved.'),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('level'),
    unit: z.string().max(40).describe('Read by: daylog/turns.'),
    axis: z
      .enum(['along', 'out'])
      .describe('Level laid along the front edge, or from back to front. Read by: daylog/turns.'),
    place: z
      .enum(['top', 'underside', 'front-edge', 'shelf'])
      .describe('Where the level lay. Read by: daylog/turns.'),
    low: z
      .enum(['left', 'right', 'front', 'back', 'neither'])
      .describe('Which end was low. Read by: daylog/turns.'),
    packer: tape({ min: 0, max: 100 }).describe(
      'Packing under the low end that brought the bubble to the middle. Read by: daylog/turns.',
    ),
    levelLength: tape({ min: 50, max: 3000 }).describe(
      'Length of the level, or the distance from its far end to the packer. Read by: daylog/turns.',
    ),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('tried'),
    unit: z.string().max(40).describe('The unit it was tried on. Read by: daylog/achieved.'),
    part: z.enum(['height-screw', 'draw-in-screw', 'leg']).describe('Read by: daylog/achieved.'),
    place: z
      .enum(['upper', 'lower', 'front', 'inner'])
      .nullable()
      .default(null)
      .describe('Which screw it is. Read by: daylog/achieved.'),
    perTurn: perTurn().describe('What one turn did, as measured. Read by: daylog/achieved.'),
    clockwise: z.enum(['raises', 'lowers']).nullable().default(null).describe('Read by: daylog/achieved.'),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('observed'),
    fact: z
      .string()
      .max(200)
      .describe('Id of a surveyed fact, such as walls.b.studs.s4.confirmed. Read by: daylog/observed.'),
    value: z
      .union([z.number(), z.string().max(200), z.boolean(), z.null()])
      .describe('What it was found to be, as the kitchen file would say it. Read by: daylog/observed.'),
  }),
  z.strictObject({
    ...head,
    kind: z.literal('correct'),
    entry: id.describe('The earlier entry that does not hold. Read by: daylog/read-log.'),
    because: z.string().max(400).optional(),
  }),
])

export const dayLogSchema = z.strictObject({
  format: z.literal(LOG_FORMAT),
  version: z.literal(LOG_VERSION),
  kitchen: z.string().max(200).optional().describe('Name of the kitchen it belongs to. Read by: app.'),
  entries: z
    .array(entry)
    .max(5000)
    .default([])
    .describe('In order, as they were made. Read by: daylog/read-log.'),
})

export type DayLogFile = z.input<typeof dayLogSchema>
export type DayLog = Stamped<z.output<typeof dayLogSchema>>
export type LogEntry = DayLog['entries'][number]
