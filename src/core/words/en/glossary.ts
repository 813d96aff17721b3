/** One word of the trade, and what it is taken to mean here. */
export interface TradeWord {
  /** As it is listed. */
  readonly word: string
  /**
   * How it stands in a sentence, in lower case and in the singular; left out: as it is listed. A form of two words or more
   * goes before a shorter one that it holds.
   */
  readonly forms?: readonly string[]
  /** What it is, and what it does here: a sentence or two. */
  readonly says: string
  /** Where the same word says something else too: how the keys of the messages begin in which it means this. */
  readonly onlyIn?: readonly string[]
  /** How the keys of the messages begin in which it means something else. */
  readonly notIn?: readonly string[]
}

/**
 * Words of the trade that a first-time fitter may not know, explained in our own words. A word is here when some sentence
 * uses it; none of them says of anything that it will hold.
 */
export const GLOSSARY: readonly TradeWord[] = [
  {
    word: 'backing block',
    says: 'A piece of waste wood held where the drill comes out. It keeps the far face from splintering.',
  },
  {
    word: 'band',
    forms: ['band', 'cable band'],
    says: 'A strip of wall in which a cable or pipe is likely to run, reckoned from the sockets, corners and pipes of your survey. What lies outside it is not known to be free.',
  },
  {
    word: 'batten',
    says: 'A straight, narrow length of timber. It is marked as a rod, or fixed or held as a ledge to rest a unit on.',
  },
  {
    word: 'bay',
    says: 'The gap between two units where an appliance stands. No unit carries the worktop over it.',
  },
  {
    word: 'bearer',
    says: 'A length of timber laid under something heavy, so that it can be set down and picked up again without trapping fingers.',
  },
  {
    word: 'bit',
    forms: ['bit', 'drill bit'],
    says: 'The part of a drill that cuts. How deep its tip goes is measured from the finished face of the wall.',
  },
  {
    word: 'bracket',
    forms: ['bracket', 'l bracket'],
    says: 'A bent piece of metal, screwed to the wall by one leg and to the unit by the other. It keeps the unit from moving or tipping away from the wall.',
  },
  {
    word: 'bridging unit',
    forms: ['bridging unit', 'bridging'],
    says: 'A short unit hung between two others, mostly over a hood or a fridge.',
  },
  {
    word: 'carcass',
    says: 'The box of a unit: its sides, top, bottom and back, without doors, shelves and legs.',
  },
  {
    word: 'chipboard',
    says: 'Wood chips pressed to a board with glue: what most units are made of. Screws turned too hard strip out of it.',
  },
  {
    word: 'clear hole',
    says: 'A hole a little wider than the screw, so that the screw slips through the first piece and pulls it tight to the next.',
  },
  {
    word: 'cleat',
    says: 'A strip of timber screwed to a floor or wall, which a unit is then set over or screwed to.',
  },
  {
    word: 'cornice',
    says: 'The strip along the top of wall units or tall units, cut to the ceiling or to one height.',
  },
  {
    word: 'depth stop',
    says: 'A collar or rod on the drill that ends the hole at a set depth. It is set before the first hole and looked at again after it.',
  },
  {
    word: 'detector',
    says: 'An instrument moved over a wall to find cables, pipes, metal and timber. It can be fooled: silence proves nothing.',
  },
  {
    word: 'diagonal',
    says: 'From one corner to the opposite one. When both diagonals of a box are equal, its corners are square.',
  },
  {
    word: 'draw-in screw',
    says: 'The screw of a hanger that pulls the unit back to the wall. The other screw sets its height.',
  },
  {
    word: 'end panel',
    says: 'A finished board on the open side of the last unit of a run. It is cut to the wall, and may help carry the worktop.',
  },
  {
    word: 'filler',
    says: 'A narrow strip that closes the gap between a unit and a wall or corner, so that doors and drawers can open past it.',
  },
  {
    word: 'finished face',
    says: 'The surface of the wall as it will be, plaster and tiles included. Depths are measured in from it.',
  },
  {
    word: 'flush',
    says: 'In one plane, neither standing out nor set back: a fingertip drawn across feels no step.',
  },
  {
    word: 'hanger',
    says: 'A metal fitting in each top corner of a wall unit. Its hook goes over a rail or plate on the wall, and its screws move the unit up and down, and in.',
  },
  {
    word: 'height screw',
    says: 'The screw of a hanger that lifts or lowers the unit. Which of the two screws it is differs between makers: look, or try it.',
  },
  {
    word: 'hold point',
    says: 'A place in the work where you stop until a check is done, because what comes next cannot be taken back.',
  },
  {
    word: 'hook-on edge',
    says: 'The edge of a rail or plate which the hooks of the hangers sit on. Its height sets the height of the unit.',
  },
  {
    word: 'hooked',
    says: 'Hanging by its hooks only. It can still be lifted or knocked off: somebody keeps hold of it.',
  },
  {
    word: 'jig',
    says: 'A template that guides the drill or router, so that every hole comes at the same place.',
  },
  {
    word: 'laser',
    says: 'An instrument that throws a level line of light on the wall. It is tried before it is trusted: turned round, it must meet its own line.',
  },
  {
    word: 'let-in timber',
    says: 'Timber set into a wall between the studs, flush with them, to give a screw something to bite in.',
  },
  {
    word: 'level',
    forms: ['the level', 'long level'],
    says: 'A straight bar with a bubble in it. The bubble stands in the middle when the bar lies level, or stands upright.',
  },
  {
    word: 'lintel',
    says: 'The beam of concrete, steel or timber over a door or window. Some must not be drilled at all.',
  },
  {
    word: 'lock',
    forms: ['the lock', 'locks turned'],
    says: 'A catch on a hanger that keeps the hook from being lifted off the rail. Not every hanger has one.',
  },
  {
    word: 'locked off',
    says: 'Switched off with a lock on the switch, so that nobody can switch it on while you work.',
  },
  {
    word: 'masonry',
    says: 'Brick, block or stone. It takes a plug, set in the solid and not in the plaster or a joint.',
  },
  {
    word: 'mid travel',
    says: 'Half way between the two ends of what an adjuster can do, so that it can still go either way.',
  },
  {
    word: 'nogging',
    says: 'A short piece of timber fixed crosswise between two studs, where a screw needs something to bite in and no stud is.',
  },
  {
    word: 'overhang',
    says: 'How far the worktop stands out past the front of the units under it.',
  },
  {
    word: 'packing',
    forms: ['packing', 'pack', 'packed', 'packer'],
    says: 'Thin pieces put into a gap to fill it, behind a unit or under it. A screw can then be tightened without pulling the unit out of line.',
  },
  {
    word: 'pattress',
    says: 'A board fixed across the face of the studs, to screw to where the studs are in the wrong place.',
  },
  {
    word: 'pelmet',
    says: 'The strip along the underside of wall units, mostly to hide lights.',
  },
  {
    word: 'pilot',
    forms: ['pilot', 'pilot hole'],
    says: 'A hole narrower than the screw, drilled first. It shows the screw the way and keeps the wood from splitting.',
  },
  {
    word: 'plate',
    forms: ['plate', 'wall plate'],
    says: 'A short piece of metal screwed to the wall for one hanger to hook on: two for each wall unit.',
  },
  {
    word: 'plinth',
    says: 'The board that closes the gap between the floor and the underside of the base units. It clips to the legs and comes off again.',
  },
  {
    word: 'plug',
    says: 'A sleeve put into a drilled hole in brick or block, which the screw spreads so that it grips.',
    // A sink has one too, and every appliance.
    onlyIn: ['operation.plug.', 'operation.drill.', 'operation.screw.', 'check.plugs-in-the-solid'],
  },
  {
    word: 'plumb',
    says: 'Exactly upright, as a weight hangs on a string.',
  },
  {
    word: 'prop',
    says: 'A post set under a unit to take its weight while it is fixed.',
  },
  {
    word: 'proved dead',
    says: 'Shown to carry no current, by somebody competent with the right instrument. Switched off is not the same.',
  },
  {
    word: 'rail',
    says: 'A metal strip screwed level to the wall, which hangers hook over. The rail of a unit is the stiff strip across its own back.',
  },
  {
    word: 'RCD',
    forms: ['rcd'],
    says: 'A device in the supply that cuts it off within a blink when current goes astray, as through a person.',
  },
  {
    word: 'respirator',
    says: 'A mask that filters what you breathe, tight to the face. A loose paper mask does not keep fine dust out.',
  },
  {
    word: 'restrain',
    forms: ['restrain', 'restrained'],
    says: 'To fix the top of a tall unit back to the wall, so that it cannot tip. Until then somebody holds it.',
  },
  {
    word: 'router',
    says: 'A machine that cuts grooves and shaped edges with a fast turning cutter, guided by a jig.',
  },
  {
    word: 'run',
    forms: ['measured run', 'both runs', 'each run', 'the run', 'run of units'],
    says: 'A row of units side by side along one wall, from its first unit to its last.',
  },
  {
    word: 'sack barrow',
    says: 'A two-wheeled truck for moving tall loads upright. What stands on it is strapped to it.',
  },
  {
    word: 'scribe',
    forms: ['scribe', 'scribed', 'scribing'],
    says: 'To draw the shape of an uneven wall onto a board and cut the board to it, so that no gap is left.',
  },
  {
    word: 'secured',
    says: 'Screwed to the wall for good, with all the fixings the plan gives it. Only then is it let go of, loaded or given doors.',
  },
  {
    word: 'shim',
    says: 'A thin wedge or slip, pushed in under or behind a unit to bring it to its height or upright.',
  },
  {
    word: 'snag',
    forms: ['snag', 'snagging'],
    says: 'To go round at the end and look for what is not right yet. A snag is one such thing.',
  },
  {
    word: 'splashback',
    says: 'The panel or tiles on the wall between worktop and wall units.',
  },
  {
    word: 'square',
    forms: ['square it', 'out of square'],
    says: 'With corners of exactly 90 degrees. A box that leans out of square never gets its doors in line.',
  },
  {
    word: 'stand-off fixing',
    says: 'A fixing for board that stands away from the wall behind it. It reaches the solid and holds there, so that the board is not crushed.',
  },
  {
    word: 'stop valve',
    says: 'The tap in the pipe which turns off the water of the whole house or of this room.',
  },
  {
    word: 'storey rod',
    says: 'A straight batten with all the measures of a wall marked on it. Held to the wall it shows at once where a mark is wrong.',
  },
  {
    word: 'string line',
    forms: ['string line', 'stretch a string'],
    says: 'A string stretched between two marks. It is straight, though the wall is not, and the fronts of the units are set by it.',
  },
  {
    word: 'stripped',
    says: 'With its doors, drawers and loose shelves out, so that it weighs less to lift.',
  },
  {
    word: 'stud',
    says: 'An upright timber or metal post inside a wall, behind the board. Screws that carry go into its middle.',
  },
  {
    word: 'the line',
    forms: ['the line', 'level line', 'datum'],
    // There the lines between fronts are looked along.
    notIn: ['check.lines-through'],
    says: 'The level line struck round the room to begin with: height 0. Every height is measured up or down from it, never from the floor.',
  },
  {
    word: 'trace',
    forms: ['trace', 'traced'],
    says: 'To go over a wall with a detector and mark what it finds, before anything is drilled.',
  },
  {
    word: 'trestle',
    says: 'A folding stand. A worktop is laid over two or three of them to be cut.',
  },
  {
    word: 'underside',
    says: 'The lower face of a unit’s box, without its legs. Its height is measured from the line.',
  },
  {
    word: 'upstand',
    says: 'A low strip on the worktop along the wall, which covers the gap there.',
  },
]
