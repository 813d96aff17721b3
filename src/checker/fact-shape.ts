/**
 * Which facts a kitchen file can hold, written out once more for this checker: a fact that is cited as missing is by its
 * nature not in the file, yet must be one that could stand there. `figure` may be unknown; a list holds things with ids.
 */
export type FactShape =
  | 'figure'
  | 'word'
  | { readonly list: FactShape }
  | { readonly fields: Readonly<Record<string, FactShape>> }

const F = 'figure' as const
const W = 'word' as const

function named(names: string, shape: FactShape): Readonly<Record<string, FactShape>> {
  return Object.fromEntries(names.split(' ').map((name) => [name, shape]))
}
const fields = (...parts: readonly Readonly<Record<string, FactShape>>[]): FactShape => ({
  fields: Object.assign({}, ...parts),
})
const list = (...parts: readonly Readonly<Record<string, FactShape>>[]): FactShape => ({
  list: fields({ id: W }, ...parts),
})

const along = fields(named('from face', W), { at: F })
const height = fields({ line: W }, named('up down aboveFloor', F))
const place = fields({ wall: W, along, out: F })
const rect = { ...named('left right', along), ...named('bottom top', height) }
const order = fields({ left: along, gap: F }, named('rightOf leftOf', W))
const layers = list({ material: W, thickness: F })

const wall = list(
  named('name lengthAt lengthTo construction knock behind otherFaceChecked traced provedDead', W),
  named('length thickness otherFaceShift tracedDepth', F),
  {
    cornerRight: fields(named('angle thisLeg nextLeg across', F)),
    widths: list(named('at depth', W), { width: F }),
    layers,
    layersToCome: layers,
    studs: list(named('material confirmed', W), { centre: along, width: F }),
    studTimber: fields(named('grade', W), named('density specificGravity', F)),
    noggings: list({ kind: W, from: along, to: along, centre: height }, named('depth thickness', F)),
    plumb: list({ along }, named('over lean', F)),
    straightness: list({ height, along }, named('bow over', F)),
    accessories: list(
      named('kind face live serves cutOut', W),
      { along, height },
      named('width tall standsProud', F),
    ),
    services: list(
      named('kind face traced', W),
      { points: list({ along, height }) },
      named('width depth', F),
    ),
    lintels: list({ kind: W }, rect),
    openings: list(
      named('kind hinge opens', W),
      rect,
      named('architrave boardProjection leaf handle', F),
      named('boardLeft boardRight sashBottom', height),
    ),
  },
)

const unit = list(
  named('name kind wall stands assembled hand delivered applianceBay', W),
  named('standOff width height depth returnLeft returnRight returnDepth board back void front', F),
  named('shelves massEmpty massStripped contents', F),
  {
    order,
    feet: list(named('x y', F)),
    legs: fields(named('min max delivered perTurn', F), { maySwing: W }),
    hanging: fields(
      named('plateBelowTop plateHoleBelow plateHoles plateHolePitch hangerIn hookLift up down', F),
      { heightScrew: fields({ perTurn: F }, named('place clockwise', W)) },
      { drawInScrew: fields({ perTurn: F, place: W }), antiLift: W, ratedPerHanger: F },
    ),
    backRail: fields(named('fromTop height thickness', F)),
    bottomRail: fields(named('fromBottom height thickness', F)),
    doors: list({ hinge: W }, named('width height thickness mass opens handle rise', F)),
    drawers: list({ inner: W }, named('travel height boxTop mass handle', F)),
  },
)

const appliance = list(
  named('name kind fuel over case clearFrom hinge delivered', W),
  named('clearTall clearBelow clearFront panSupports below sleeveMin sleeveMax doorOut doorNeeds shelf', F),
  named('plinthMin plinthMax frontMin frontMax tapHeight tapFromWall tapLever outlet', F),
  named('ductBends ductLength ductBendsMax ductLengthMax ventPlanned', F),
  { underside: height },
  named('heightMin heightMax widthNeeded depthNeeded workingGap clearAbove clearSide', F),
  named('leadLength hoseLength ventArea mass', F),
)
const finishing = list(
  named('name kind wall of delivered', W),
  { order },
  named('width height depth length setBack openingHeight scribe', F),
)
const worktop = list(
  named('name over material delivered', W),
  named('thickness depth mass freeOverhang freeOverhangMax', F),
  {
    joints: list({ along, wall: W }),
    cutouts: list(named('for wall', W), { left: along }, named('width front depth', F)),
  },
)
const fixing = list(
  named('name kind for into delivered', W),
  named('diameter length thread core tip bit holeDepth embedment pull shear', F),
)
const rail = list(named('wall units delivered', W), named('thickness overhang maxSpacing slots length', F))
const side = fields(named('operation kind on', W))

export const KITCHEN_FACTS: FactShape = fields(
  named('format version name region display demo closed keptOrder', W),
  {
    survey: fields(
      named('date by houseBuilt gas ceilingHeatingCables', W),
      named('tapePrecision levelPrecision', F),
    ),
    lines: list(named('offset closing reversal', F), {
      carried: list({ line: W }, named('there here', fields(named('up down', F)))),
    }),
    walls: wall,
    ceiling: list({ at: place, height }),
    boxes: list(named('kind wall', W), rect, named('near out', F)),
    access: list(named('kind wall panel', W), { along, height }, named('out door', F)),
    floor: fields(
      named('kind changed heating finishWhere', W),
      named('heatingDepth finishToCome worstDrop', F),
      {
        readings: list({ at: place, line: W, drop: F }),
      },
    ),
    units: unit,
    rails: rail,
    appliances: appliance,
    finishing,
    worktops: worktop,
    fixings: fixing,
    wishes: fields({
      heights: list(named('of equals', W), named('min max', height), { place }),
      order: list({ before: side, after: side, hard: W }, named('minLag maxLag', F)),
      overrides: list({ arc: W }),
    }),
    crew: fields({
      people: list(named('name filter alwaysThere', W), { own: F, windows: list(named('from to', W)) }),
      lifter: fields({ rated: F }),
      hours: W,
      extraction: W,
    }),
    route: list({ kind: W }, named('width width2 height ceiling', F)),
    staging: place,
  },
)
