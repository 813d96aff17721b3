import { derive, hasValue, known } from '../figure'
import type { Appliance } from '../kitchen/schema'
import { type Found, lessThan, margin, missing, type Rule, type Site } from './rule'

/** Room for clips and hands beside a bowl, and behind a tap lever. Common practice. */
const ROUND_A_BOWL = known(20, 0, 'mm', [], { kind: 'common-practice', why: 'clips and hands beside a bowl' })

function bowl(site: Site, sink: Appliance): readonly Found[] {
  const unit = site.stated(sink.over ?? '')
  const hole = site.kitchen.worktops.flatMap(({ cutouts }) => cutouts).find((c) => c.for === sink.id)
  if (unit === undefined || hole === undefined) return []
  const clear = derive(
    'mm',
    { kind: 'geometry', why: 'width of the unit less its two sides and room for clips' },
    [unit.width, unit.board, ROUND_A_BOWL],
    (w, b, r) => (w as number) - 2 * (b as number) - (r as number),
  )
  const left = lessThan(clear, hole.width, 'clear width less the hole')
  const key = margin(left)
  if (key === null || key === 'not-known') return []
  return [
    {
      subjects: [sink.id, unit.id],
      about: [sink.id, unit.id],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [
        `bowl-${key}`,
        {
          unit: site.name(unit.id),
          width: hole.width,
          clear,
          ...(key === 'short' ? { short: missing(left) } : {}),
        },
      ],
      figures: [left],
      ask: ['ask'],
    },
  ]
}

function tap(sink: Appliance): readonly Found[] {
  const left = lessThan(sink.tapFromWall, sink.tapLever, 'tap hole to wall less the swing of the lever')
  const key = margin(left)
  if (!hasValue(left) || key === null) return []
  return [
    {
      subjects: [sink.id, 'tap'],
      about: [sink.id, ...(sink.over === null ? [] : [sink.over])],
      weight: key === 'short' ? 'stop' : 'ask',
      said: [
        `tap-${key}`,
        {
          wall: sink.tapFromWall,
          lever: sink.tapLever,
          ...(key === 'short' ? { short: missing(left) } : {}),
        },
      ],
      figures: [left],
      ask: ['ask'],
    },
  ]
}

/** F105: a bowl too wide for its unit, or a tap whose lever hits the wall. */
export const rule: Rule = {
  id: 'bowl-and-tap',
  heading: 'Sink and tap',
  catches: ['F105'],
  dangerous: false,
  basis: { kind: 'geometry', why: 'hole against clear width; swing of the lever against the wall behind it' },
  why: 'A hole once cut is not moved, and a lever that hits the tiles never shuts the tap.',
  words: {
    'bowl-short':
      'The hole for the sink is {width} wide; between the sides of {unit}, with room for clips, there are {clear}. {short} is missing.',
    'bowl-near':
      'The hole for the sink is {width} wide, just as much as {unit} has between its sides with room for clips: measure both.',
    'tap-short':
      'The lever of the tap swings {lever}, and its hole is {wall} from the wall: {short} is missing.',
    'tap-near':
      'The lever of the tap swings {lever}, and its hole is {wall} from the wall: too near to tell.',
    ask: 'Read the sheets of sink and tap before the worktop is cut. A tap can be turned so that its lever is at the side.',
  },
  check: (site) =>
    site.kitchen.appliances
      .filter(({ kind }) => kind === 'sink')
      .flatMap((sink) => [...bowl(site, sink), ...tap(sink)]),
}
