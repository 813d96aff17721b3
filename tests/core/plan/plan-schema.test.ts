import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Ajv from 'ajv'
import { expect, test } from 'vitest'
import { schemaText } from '../../../src/cli/schema-files'
import { workThrough } from '../../../src/core/plan/entry'
import { readWrittenPlan, writtenPlan } from '../../../src/core/plan/plan-file'
import { PLAN_SCHEMA, planSchema } from '../../support/plan-schema'
import { ROOT } from '../../support/root'

const written = readFileSync(join(ROOT, PLAN_SCHEMA), 'utf8')

test('the schema of the plan is as its types say', () => {
  expect(written === schemaText(planSchema()), 'out of date: run npm run schema').toBe(true)
}, 60_000)

const accepts = new Ajv({ strict: false }).compile(JSON.parse(written))

test.each(['one-wall', 'l-shape', 'no-order'])('what comes of %s is as the schema says', (name) => {
  const kitchen: unknown = JSON.parse(readFileSync(join(ROOT, `scenes/${name}.dryrun.json`), 'utf8'))
  const outcome = workThrough(kitchen)
  if (outcome.kind === 'refused') throw new Error('a demo kitchen is refused')
  const printed: unknown = JSON.parse(
    JSON.stringify(writtenPlan(outcome.kind === 'plan' ? outcome.plan : outcome.noPlan)),
  )
  accepts(printed)
  expect(accepts.errors ?? []).toEqual([])
  accepts({ ...(printed as object), surprise: true })
  expect(accepts.errors).not.toBeNull()
})

test('what was written is read back whole, and a list that is not there is noticed', () => {
  const kitchen: unknown = JSON.parse(readFileSync(join(ROOT, 'scenes/one-wall.dryrun.json'), 'utf8'))
  const outcome = workThrough(kitchen)
  if (outcome.kind !== 'plan') throw new Error('a demo kitchen gives no plan')
  const plain: unknown = JSON.parse(JSON.stringify(outcome.plan))
  const written = writtenPlan(outcome.plan)
  expect(readWrittenPlan(JSON.parse(JSON.stringify(written)))).toEqual(plain)
  expect(readWrittenPlan({ ...written, lists: {} })).toBeUndefined()
})
