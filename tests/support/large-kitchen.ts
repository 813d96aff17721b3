/** A kitchen file with `count` units: base units and wall units in turn along two facing walls of a long masonry room. */
export function largeKitchen(count: number): unknown {
  const perWall = Math.ceil(count / 4)
  const length = perWall * 600 + 400
  const walls = ['a', 'b', 'c', 'd'].map((id, i) => ({
    id,
    length: i % 2 === 0 ? length : 4200,
    cornerRight: { angle: 90 },
    construction: 'masonry',
    layers: [
      { id: 'skim', material: 'plaster', thickness: 12 },
      { id: 'brick', material: 'brick', thickness: 100 },
    ],
    thickness: 250,
    behind: 'outside',
    traced: 'whole',
    tracedDepth: 90,
    provedDead: true,
    accessories: i % 2 === 0 ? sockets(perWall) : [],
  }))
  const units = Array.from({ length: count }, (_, i) => unitOf(i, perWall))
  return {
    format: 'dryrun-kitchen',
    version: 1,
    name: `${count} units`,
    region: 'uk',
    demo: true,
    survey: { houseBuilt: 2006, gas: false },
    lines: [{ id: 'line', offset: 0, closing: 0, reversal: 0 }],
    closed: true,
    walls,
    ceiling: [0, 1, 2, 3].map((i) => ({
      id: `c${i}`,
      at: { wall: 'a', along: { at: i % 2 === 0 ? 10 : length - 10 }, out: i < 2 ? 10 : 4190 },
      height: { up: 1400 },
    })),
    floor: { readings: readings(length) },
    units,
    worktops: [],
    fixings: [
      {
        id: 'plug',
        kind: 'screw-and-plug',
        diameter: 6,
        length: 90,
        bit: 8,
        holeDepth: 55,
        embedment: 50,
        for: ['plate', 'base-bracket'],
        into: ['brick'],
        pull: 900,
        shear: 900,
      },
    ],
    crew: {
      people: [
        { id: 'one', filter: 'man' },
        { id: 'two', filter: 'man' },
      ],
    },
  }
}

function sockets(perWall: number) {
  return Array.from({ length: Math.ceil(perWall / 2) }, (_, i) => ({
    id: `s${i}`,
    kind: 'socket',
    along: { at: 500 + i * 1200 },
    height: { up: 80 },
    width: 146,
    tall: 86,
  }))
}

function readings(length: number) {
  const columns = Math.max(3, Math.ceil(length / 1500))
  return Array.from({ length: columns * 3 }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)]
    return {
      id: `r${i}`,
      at: { wall: 'a', along: { at: (length * column) / (columns - 1) }, out: [10, 2100, 4190][row] },
      drop: 1000 + ((column * 7 + row * 3) % 13),
    }
  })
}

function unitOf(i: number, perWall: number) {
  const wall = Math.floor(i / 2) < perWall ? 'a' : 'c'
  const slot = Math.floor(i / 2) % perWall
  const order = { left: { at: 200 + slot * 600 } }
  const sizes = {
    wall,
    order,
    width: 600,
    board: 18,
    back: 8,
    front: 18,
    shelves: 1,
    assembled: 'flat-packed',
    contents: 40,
  }
  if (i % 2 === 0) {
    return {
      ...sizes,
      id: `base-${i}`,
      kind: 'base',
      height: 720,
      depth: 560,
      void: 40,
      stands: 'legs',
      legs: { min: 100, max: 180, delivered: 140, perTurn: 2, maySwing: false },
      feet: [
        { id: 'bl', x: 60, y: 60 },
        { id: 'br', x: 540, y: 60 },
        { id: 'fl', x: 60, y: 510 },
        { id: 'fr', x: 540, y: 510 },
      ],
    }
  }
  return {
    ...sizes,
    id: `wall-${i}`,
    kind: 'wall',
    height: 720,
    depth: 300,
    void: 16,
    stands: 'plates',
    hanging: {
      plateBelowTop: 40,
      plateHoleBelow: 10,
      plateHoles: 1,
      hangerIn: 40,
      hookLift: 12,
      up: 8,
      down: 8,
      heightScrew: { perTurn: 1.25 },
    },
  }
}
