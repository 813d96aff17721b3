import { appliances } from './appliances'
import type { Page } from './field'
import { numbered } from './numbers'
import { finishing, fixings, railList, worktops } from './parts'
import { access, boxes, ceiling, closed, floor, house, lines, staging, wayIn } from './room'
import { units } from './units'
import { walls } from './walls'
import { crew, heightWishes, orderWishes, overrides } from './wishes'

/** The survey and the delivery list, page by page, in the order they are gone through with a tape in the hand. */
export const PAGES: readonly Page[] = numbered([
  {
    id: 'house',
    title: 'House and line',
    how: 'Where this is, and the level line all heights are read from.',
    fields: [...house, lines],
    head: ['name', 'survey.date', 'survey.by'],
    lines: ['region', 'survey.houseBuilt', 'survey.gas', 'survey.tapePrecision', 'survey.levelPrecision'],
  },
  {
    id: 'walls',
    title: 'Walls',
    how: 'Wall by wall, as you stand inside and look at it; left to right.',
    fields: [walls, closed],
    lines: ['closed'],
  },
  {
    id: 'levels',
    title: 'Floor and ceiling',
    how: 'How far the floor lies below the line and the ceiling above it.',
    fields: [...floor, ceiling],
    lines: floor.filter(({ kind }) => kind !== 'list').map(({ key }) => key),
  },
  {
    id: 'fixed',
    title: 'In the room',
    how: 'What stands in the way, what must stay within reach, and the way in.',
    fields: [boxes, access, wayIn, staging],
  },
  {
    id: 'units',
    title: 'Units',
    how: 'What was delivered. The sheet that came with a unit goes before everything usual.',
    fields: [units, railList],
  },
  {
    id: 'appliances',
    title: 'Appliances',
    how: 'By the figures of their own sheets.',
    fields: [appliances],
  },
  {
    id: 'parts',
    title: 'Panels and worktops',
    how: 'Fillers, end panels, plinths and what lies on top.',
    fields: [finishing, worktops],
  },
  {
    id: 'fixings',
    title: 'Screws and plugs',
    how: 'Only what its maker states for this material counts as a load.',
    fields: [fixings],
  },
  {
    id: 'wishes',
    title: 'Wishes and people',
    how: 'What you want, and who lifts.',
    fields: [heightWishes, orderWishes, overrides, ...crew],
  },
])
