import type {
  Given,
  GivenBox,
  GivenFinishing,
  GivenFixing,
  GivenHeight,
  GivenOrder,
  GivenOrderSide,
  GivenOrderWish,
  GivenUnit,
  GivenWish,
  GivenZone,
} from './given'
import { at, flagAt, isRecord, itemsAt, numberAt, ownId, rootSpot, type Spot, textAt, wordsAt } from './json'
import { isKnown, less, type Measure, measureAt, notKnown, nought, sum, work } from './measure'
import { readAlong, readHeight, readPlace, readRect } from './read-places'
import { readWall } from './read-wall'

/** Reads the kitchen file afresh. It has been let in by the parser already; here it is only read, not judged. */
/** The level lines in order: the first is height 0, each further one as typed, or as marks put it that were read twice. */
function readLines(file: Spot): Given['lines'] {
  const lines: { id: string; offset: Measure }[] = []
  for (const line of itemsAt(file, 'lines')) {
    const isFirst = lines.length === 0
    lines.push({ id: ownId(line), offset: isFirst ? nought : levelOf(line, [...lines]) })
  }
  return lines
}

function levelOf(line: Spot, before: Given['lines']): Measure {
  const typed = measureAt(line, 'offset')
  const marks = itemsAt(line, 'carried')
  if (isKnown(typed) || marks.length === 0) return typed
  const each = marks.map((mark) => {
    const from = textAt(mark, 'line') ?? 'line'
    const other =
      before.find((one) => one.id === from)?.offset ??
      (from === 'line' ? nought : notKnown(`${line.id}.offset`))
    return less(sum(other, upTo(at(mark, 'there'))), upTo(at(mark, 'here')))
  })
  const sure = each.filter(isKnown)
  if (sure.length === 0) return each[0] ?? typed
  return work(sure, (...all) => (Math.min(...all) + Math.max(...all)) / 2)
}

function upTo(reading: Spot): Measure {
  const up = measureAt(reading, 'up')
  return isKnown(up) ? up : less(nought, measureAt(reading, 'down'))
}

/** A room read with a tape is good to this, mm; common practice. */
const USUAL_TAPE = 2

export function readKitchen(json: unknown, observed: ReadonlyMap<string, unknown>): Given {
  const file = rootSpot(json, observed)
  const survey = at(file, 'survey')
  const floor = at(file, 'floor')
  const wishes = at(file, 'wishes')
  const tape = measureAt(survey, 'tapePrecision').value ?? USUAL_TAPE
  return {
    region: textAt(file, 'region'),
    houseBuilt: numberAt(survey, 'houseBuilt'),
    gas: flagAt(survey, 'gas'),
    closed: flagAt(file, 'closed'),
    lines: readLines(file),
    walls: itemsAt(file, 'walls').map((wall) => readWall(wall, tape)),
    ceiling: itemsAt(file, 'ceiling').map((c) => ({
      id: ownId(c),
      at: readPlace(at(c, 'at')),
      height: readHeight(at(c, 'height')),
    })),
    boxes: itemsAt(file, 'boxes').map(readBox),
    finishToCome: measureAt(floor, 'finishToCome'),
    finishWhere: textAt(floor, 'finishWhere'),
    readings: itemsAt(floor, 'readings').map((r) => ({
      id: ownId(r),
      at: readPlace(at(r, 'at')),
      line: textAt(r, 'line') ?? 'line',
      drop: measureAt(r, 'drop'),
    })),
    units: itemsAt(file, 'units').map(readUnit),
    rails: itemsAt(file, 'rails').map((r) => ({
      id: ownId(r),
      wall: textAt(r, 'wall') ?? '',
      units: wordsAt(r, 'units'),
      thickness: measureAt(r, 'thickness'),
      maxSpacing: measureAt(r, 'maxSpacing'),
    })),
    appliances: itemsAt(file, 'appliances').map((a) => ({
      id: ownId(a),
      kind: textAt(a, 'kind') ?? '',
      fuel: textAt(a, 'fuel'),
      heightMin: measureAt(a, 'heightMin'),
      heightMax: measureAt(a, 'heightMax'),
      workingGap: measureAt(a, 'workingGap'),
      over: textAt(a, 'over'),
    })),
    finishing: itemsAt(file, 'finishing').map(readFinishing),
    worktops: itemsAt(file, 'worktops').map((w) => ({
      id: ownId(w),
      over: wordsAt(w, 'over'),
      thickness: measureAt(w, 'thickness'),
    })),
    fixings: itemsAt(file, 'fixings').map(readFixing),
    heightWishes: itemsAt(wishes, 'heights').map(readWish),
    orderWishes: itemsAt(wishes, 'order').map(readOrderWish),
  }
}

function readBox(spot: Spot): GivenBox {
  return {
    ...readRect(spot),
    wall: textAt(spot, 'wall') ?? '',
    near: measureAt(spot, 'near'),
    out: measureAt(spot, 'out'),
  }
}

function readOrder(spot: Spot): GivenOrder {
  const left = at(spot, 'left')
  return {
    left: isRecord(left.json) ? readAlong(left) : null,
    rightOf: textAt(spot, 'rightOf'),
    leftOf: textAt(spot, 'leftOf'),
    gap: measureAt(spot, 'gap'),
  }
}

function readZone(spot: Spot, edge: string): GivenZone {
  return {
    edge: measureAt(spot, edge),
    height: measureAt(spot, 'height'),
    thickness: measureAt(spot, 'thickness'),
  }
}

function readUnit(spot: Spot): GivenUnit {
  const legs = at(spot, 'legs')
  const hanging = at(spot, 'hanging')
  const m = (key: string): Measure => measureAt(spot, key)
  return {
    id: ownId(spot),
    kind: textAt(spot, 'kind') ?? '',
    wall: textAt(spot, 'wall') ?? '',
    order: readOrder(at(spot, 'order')),
    standOff: m('standOff'),
    width: m('width'),
    height: m('height'),
    depth: m('depth'),
    returnLeft: m('returnLeft'),
    returnRight: m('returnRight'),
    returnDepth: m('returnDepth'),
    board: m('board'),
    void: m('void'),
    stands: textAt(spot, 'stands'),
    feet: itemsAt(spot, 'feet').map((f) => ({ id: ownId(f), x: measureAt(f, 'x'), y: measureAt(f, 'y') })),
    legs: {
      min: measureAt(legs, 'min'),
      max: measureAt(legs, 'max'),
      delivered: measureAt(legs, 'delivered'),
      perTurn: measureAt(legs, 'perTurn'),
      maySwing: flagAt(legs, 'maySwing'),
    },
    hanging: {
      plateBelowTop: measureAt(hanging, 'plateBelowTop'),
      plateHoleBelow: measureAt(hanging, 'plateHoleBelow'),
      plateHoles: measureAt(hanging, 'plateHoles'),
      plateHolePitch: measureAt(hanging, 'plateHolePitch'),
      hangerIn: measureAt(hanging, 'hangerIn'),
      hookLift: measureAt(hanging, 'hookLift'),
      up: measureAt(hanging, 'up'),
      ratedPerHanger: measureAt(hanging, 'ratedPerHanger'),
      down: measureAt(hanging, 'down'),
    },
    backRail: readZone(at(spot, 'backRail'), 'fromTop'),
    bottomRail: readZone(at(spot, 'bottomRail'), 'fromBottom'),
    fronts: itemsAt(spot, 'doors').length + itemsAt(spot, 'drawers').length,
    assembled: textAt(spot, 'assembled'),
    applianceBay: textAt(spot, 'applianceBay'),
  }
}

function readFinishing(spot: Spot): GivenFinishing {
  const order = at(spot, 'order')
  return {
    id: ownId(spot),
    kind: textAt(spot, 'kind') ?? '',
    wall: textAt(spot, 'wall'),
    of: wordsAt(spot, 'of'),
    order: isRecord(order.json) ? readOrder(order) : null,
    width: measureAt(spot, 'width'),
    height: measureAt(spot, 'height'),
    setBack: measureAt(spot, 'setBack'),
  }
}

function readFixing(spot: Spot): GivenFixing {
  return {
    id: ownId(spot),
    kind: textAt(spot, 'kind') ?? '',
    diameter: measureAt(spot, 'diameter'),
    length: measureAt(spot, 'length'),
    thread: measureAt(spot, 'thread'),
    core: measureAt(spot, 'core'),
    tip: measureAt(spot, 'tip'),
    holeDepth: measureAt(spot, 'holeDepth'),
    embedment: measureAt(spot, 'embedment'),
    bit: measureAt(spot, 'bit'),
    purposes: wordsAt(spot, 'for'),
    into: wordsAt(spot, 'into'),
    pull: measureAt(spot, 'pull'),
    shear: measureAt(spot, 'shear'),
  }
}

function readWish(spot: Spot): GivenWish {
  const limit = (key: string): GivenHeight | null =>
    isRecord(at(spot, key).json) ? readHeight(at(spot, key)) : null
  return {
    id: ownId(spot),
    of: textAt(spot, 'of') ?? '',
    min: limit('min'),
    max: limit('max'),
    place: isRecord(at(spot, 'place').json) ? readPlace(at(spot, 'place')) : null,
    equals: textAt(spot, 'equals'),
  }
}

function readOrderWish(spot: Spot): GivenOrderWish {
  const side = (key: string): GivenOrderSide => {
    const set = at(spot, key)
    return { operation: textAt(set, 'operation'), kind: textAt(set, 'kind'), on: textAt(set, 'on') }
  }
  return {
    id: ownId(spot),
    before: side('before'),
    after: side('after'),
    hard: flagAt(spot, 'hard') !== false,
  }
}
