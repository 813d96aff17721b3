import type { GivenAlong, GivenHeight, GivenLayer, GivenPlace, GivenRect } from './given'
import { at, itemsAt, ownId, type Spot, textAt } from './json'
import { measureAt } from './measure'

/** Places as the file writes them: along a wall, up and down from a line, out from a face. */

export function readAlong(spot: Spot): GivenAlong {
  return {
    end: textAt(spot, 'from') === 'right' ? 'right' : 'left',
    face: textAt(spot, 'face') === 'other' ? 'other' : 'room',
    at: measureAt(spot, 'at'),
  }
}

export function readHeight(spot: Spot): GivenHeight {
  return {
    id: spot.id,
    line: textAt(spot, 'line') ?? 'line',
    up: measureAt(spot, 'up'),
    down: measureAt(spot, 'down'),
    aboveFloor: measureAt(spot, 'aboveFloor'),
  }
}

export function readPlace(spot: Spot): GivenPlace {
  return {
    wall: textAt(spot, 'wall') ?? '',
    along: readAlong(at(spot, 'along')),
    out: measureAt(spot, 'out'),
  }
}

export function readRect(spot: Spot): GivenRect {
  return {
    id: ownId(spot),
    kind: textAt(spot, 'kind'),
    left: readAlong(at(spot, 'left')),
    right: readAlong(at(spot, 'right')),
    bottom: readHeight(at(spot, 'bottom')),
    top: readHeight(at(spot, 'top')),
  }
}

export function readLayers(spot: Spot, key: string): readonly GivenLayer[] {
  return itemsAt(spot, key).map((layer) => ({
    material: textAt(layer, 'material') ?? '',
    thickness: measureAt(layer, 'thickness'),
  }))
}
