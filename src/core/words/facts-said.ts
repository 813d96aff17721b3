import type { InputId } from '../figure'
import type { Plan } from '../plan/types'
import { listed } from './listed'
import { inputName, type Named } from './plan-names'

const MOST_NAMED = 6

/** The parts of a kitchen file, as facts of them are counted. */
const PARTS: Readonly<Record<string, string>> = {
  walls: 'the walls',
  units: 'the units',
  floor: 'the floor',
  ceiling: 'the ceiling',
  lines: 'the line',
  appliances: 'the appliances',
  worktops: 'the worktops',
  finishing: 'the finishing parts',
  rails: 'the rails',
  fixings: 'the fixings',
  wishes: 'your wishes',
  log: 'the day log',
  survey: 'the survey',
  boxes: 'the boxings',
  crew: 'the crew',
  region: 'the country',
  closed: 'the walls',
}

/** As many parts of the file as a line names. */
const MOST_PARTS = 3

type Asked = Named & Pick<Plan, 'heights'>

/**
 * Facts as they are told to somebody who asks what a figure comes from: a few by name. Where there are many, most of them
 * came by way of the chosen heights, which all rest on the same survey: those are said as what they are, and the few that
 * came in besides are named. Of what is still many only the parts of the file are said, those of most facts first.
 */
export function factsSaid(ids: readonly InputId[], plan: Asked): string {
  if (ids.length <= MOST_NAMED) return named(ids, plan)
  const behind = behindHeights(ids, plan)
  if (behind.size === 0) return partsSaid(ids)
  const besides = ids.filter((id) => !behind.has(id))
  if (besides.length === 0) return `what the chosen heights rest on: ${partsSaid(ids)}`
  const rest = besides.length <= MOST_NAMED ? named(besides, plan) : partsSaid(besides)
  return `${rest}; and the chosen heights, with what they rest on`
}

const named = (ids: readonly InputId[], plan: Named): string =>
  [...new Set(ids.map((id) => inputName(id, plan)))].join('; ')

/** The facts that came by way of a height of this plan: all of what such a height rests on is among them. */
function behindHeights(ids: readonly InputId[], { heights }: Asked): ReadonlySet<InputId> {
  const all = new Set(ids)
  const whole = heights.values.filter(
    ({ height: { from } }) => from.length > MOST_NAMED && from.every((id) => all.has(id)),
  )
  return new Set(whole.flatMap(({ height }) => height.from))
}

function partsSaid(ids: readonly InputId[]): string {
  const counts = new Map<string, number>()
  for (const id of ids) {
    const part = id.split('.')[0] ?? id
    const name = PARTS[part] ?? part
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  const parts = [...counts].sort((a, b) => b[1] - a[1]).map(([name]) => name)
  const what = parts.length > MOST_PARTS ? 'many facts, above all' : 'facts'
  return `${what} of ${listed(parts.slice(0, MOST_PARTS))}`
}
