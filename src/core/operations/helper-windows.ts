import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import type { Caution } from '../plan/types'

/** Local date and time, as written in the file: 2026-10-17T09:00. */
const DATE_TIME = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})/

function windowText({ from, to }: { readonly from: string; readonly to: string }): string {
  const [begins, ends] = [DATE_TIME.exec(from), DATE_TIME.exec(to)]
  if (begins === null || ends === null) return `${from} to ${to}`
  const [, day = '', start = ''] = begins
  const [, lastDay = '', end = ''] = ends
  return day === lastDay ? `${day}, ${start} to ${end}` : `${day}, ${start}, to ${lastDay}, ${end}`
}

/**
 * Where a step needs more people than are always there: who else is needed, and when they are there. Nothing is planned
 * into those hours; the step only says that it waits for somebody.
 */
export function helperWindows({ crew }: Pick<Kitchen, 'crew'>, people: number): readonly Caution[] {
  const always = crew.people.filter((person) => person.alwaysThere).length
  const helpers = crew.people.filter((person) => !person.alwaysThere)
  if (people <= always || helpers.length === 0) return []
  return helpers.slice(0, people - always).map(({ id, name, windows }) => {
    const helper = name ?? (helpers.length === 1 ? 'Your helper' : `Helper “${id}”`)
    const key = windows.length === 0 ? 'caution.helper-not-always' : 'caution.helper-windows'
    return {
      sign: 'W001',
      say: message(key, { helper, people, windows: windows.map(windowText).join('; ') }),
    }
  })
}
