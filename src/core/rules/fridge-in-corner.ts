import { type Basis, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Appliance } from '../kitchen/schema'
import { bayOf } from '../placing/appliance-doors'
import { type CornerSide, cornerSides, fromCorner } from '../placing/corners'
import { bareWall, type HungLeaf, leafGap } from '../placing/doors-at-corners'
import { overLimit } from '../placing/over-limit'
import type { Edit, UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

/** Doors that inner drawers or shelves come out past. */
const COLD: readonly Appliance['kind'][] = ['fridge', 'freezer', 'fridge-freezer']
const nothing = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the face of the wall' })
const usual: Basis = {
  kind: 'common-practice',
  why: 'inner drawers of cold appliances ask for 110 to 125 degrees; 115 is tried where the sheet was not read',
}
const USUAL_NEED = known(115, 0, 'deg', [], usual)

interface Cold {
  readonly appliance: Appliance
  readonly plan: UnitPlan
}

/** The door it opens with: the furniture door of its housing, or its own as wide as its space. */
function leafFor(site: Site, side: CornerSide, { plan }: Cold): HungLeaf {
  const position = site.positions.find(({ unit }) => unit.id === plan.unit)
  const door = position?.unit.doors.find(({ hinge }) => hinge === side.end) ?? position?.unit.doors[0]
  const front = position !== undefined && hasValue(position.unit.front) ? position.unit.front : nothing
  const face =
    position === undefined ? plan.depth : sum('mm', rule.basis, [position.out, position.depth, front])
  return {
    edge: fromCorner(side, 'own', plan[side.end]),
    face,
    width: door !== undefined && hasValue(door.width) ? door.width : plan.width,
    handle: door !== undefined && hasValue(door.handle) ? door.handle : nothing,
  }
}

/** What its door lacks at an opening on the side towards a corner, less than nothing when there is room. */
function lacks(site: Site, side: CornerSide, cold: Cold, needs: Figure): Figure | null {
  const gap = leafGap(side, leafFor(site, side, cold), bareWall(side), needs)
  return gap === null ? null : sum('mm', rule.basis, [nothing], [gap])
}

function judged(site: Site, side: CornerSide, cold: Cold): readonly Found[] {
  const { appliance, plan } = cold
  const isRead = hasValue(appliance.doorNeeds)
  const short = lacks(site, side, cold, isRead ? appliance.doorNeeds : USUAL_NEED)
  const stands = short === null ? 'not-known' : overLimit(short)
  if (short === null || stands === 'within' || stands === 'not-known') return []
  const fact = (name: string) => factId('appliances', appliance.id, name)
  const values = {
    what: applianceSaid(appliance),
    wall: site.name(side.other),
    needs: appliance.doorNeeds,
    short,
    edge: fromCorner(side, 'own', plan[side.end]),
  }
  const common = {
    subjects: [appliance.id],
    about: [plan.unit, side.own, side.other],
    where: { wall: side.own, along: plan[side.end] },
  }
  const unread = [...(isRead ? [] : ['doorNeeds']), ...(appliance.hinge === null ? ['hinge'] : [])]
  if (unread.length > 0) {
    return [
      {
        ...common,
        weight: 'ask',
        said: ['not-read', values],
        figures: [short],
        from: unread.map(fact),
        ask: ['ask.read'],
      },
    ]
  }
  const other = side.end === 'left' ? 'right' : 'left'
  const doors = site.stated(plan.unit)?.doors ?? []
  const edits: readonly Edit[] = [
    { set: fact('hinge'), to: other },
    ...doors
      .filter(({ hinge }) => hinge === side.end)
      .map(({ id }): Edit => ({ set: factId('units', plan.unit, 'doors', id, 'hinge'), to: other })),
  ]
  return [
    {
      ...common,
      weight: stands === 'over' ? 'stop' : 'ask',
      said: [stands === 'over' ? 'short' : 'near', values],
      from: [fact('hinge')],
      ask: ['ask'],
      waysOut: [{ said: ['rehang', { what: values.what, side: other }], cost: 'an hour', edits }],
    },
  ]
}

/** A housing whose own hinges let its doors open less than the drawers inside want. */
function heldBack(site: Site, { appliance, plan }: Cold): readonly Found[] {
  const { doorNeeds } = appliance
  if (!hasValue(doorNeeds)) return []
  const doors = (site.stated(plan.unit)?.doors ?? []).filter(({ opens }) => hasValue(opens))
  const least = Math.min(
    ...doors.map(({ opens }) => (hasValue(opens) ? opens.value : Number.POSITIVE_INFINITY)),
  )
  const door = doors.find(({ opens }) => hasValue(opens) && opens.value === least)
  if (door === undefined || least >= doorNeeds.value) return []
  return [
    {
      subjects: [appliance.id, plan.unit],
      about: [plan.unit],
      weight: 'stop',
      said: [
        'held',
        { what: applianceSaid(appliance), unit: plan.name, opens: door.opens, needs: doorNeeds },
      ],
      ask: ['ask.held'],
      waysOut: [
        {
          said: ['wider', { unit: plan.name }],
          cost: 'a part to buy',
          edits: doors.map(
            ({ id }): Edit => ({
              set: factId('units', plan.unit, 'doors', id, 'opens'),
              to: doorNeeds.value,
            }),
          ),
        },
      ],
    },
  ]
}

/** F103: a tall fridge-freezer hinged towards a wall, whose door does not open as far as what is inside it wants. */
export const rule: Rule = {
  id: 'fridge-in-corner',
  heading: 'A fridge in the corner',
  catches: ['F103', 'F85'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the free edge and the handle of the door at the opening its sheet asks for, hung on the front corner of its housing, against the wall',
  },
  why: 'At a right angle the door is open and the drawers behind it are still shut in.',
  words: {
    short:
      'The door of {what} has to open to {needs} for what is inside it. {wall}, {edge} from its hinge side, is in the way: {short} more room is wanted.',
    near: 'The door of {what} has to open to {needs} for what is inside it, and comes near {wall}, {edge} from its hinge side. Readings this near cannot tell: measure from the wall to the unit again.',
    'not-read':
      'How far the door of {what} must open for what is inside it, or on which side it hangs, is not known. {wall} is {edge} from it, and hinged there it may not open far enough.',
    held: 'What is inside {what} wants its door open to {needs}, and the door of {unit} opens to {opens}.',
    ask: 'Have its door hung on the other side, or plan a wider filler to the wall. Its sheet says which way it can be changed.',
    'ask.read':
      'Look on its sheet for the opening that drawers and shelves ask for, and on which side the door hangs.',
    'ask.held': 'Ask for hinges that open as far as the sheet of the appliance says.',
    rehang: 'Hang the door of {what} on its {side} side.',
    wider: 'Fit hinges on {unit} that open that far.',
  },
  check: (site) => {
    const sides = cornerSides(site.kitchen, site.survey)
    return site.kitchen.appliances.flatMap((appliance): readonly Found[] => {
      const bay = bayOf(site.kitchen, appliance)
      const plan = bay === null ? undefined : site.unit(bay)
      if (plan === undefined || !COLD.includes(appliance.kind)) return []
      const towards = sides.filter(
        ({ own, end }) => own === plan.wall && (appliance.hinge === null || appliance.hinge === end),
      )
      return [
        ...towards.flatMap((side) => judged(site, side, { appliance, plan })),
        ...heldBack(site, { appliance, plan }),
      ]
    })
  },
}
