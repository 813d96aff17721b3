import { tryRule } from '../../support/rule-trial'

/*
 * The corner of Side wall and Hall partition, made square. Tall unit 1 stands 40 from it behind a filler, its doors are
 * hinged on the left with half a gap of 1.5: their open face stands 41.5 from Side wall. 3 is wanted past the handle, so
 * the handle may stand out 38.5. Precision: filler and handle ± 0.5 each, the wall's end ± 1.
 */
const square = [{ set: 'walls.d.cornerRight', to: { angle: { value: 90, pm: 0 } } }] as const
const handle = (to: number | null) => [{ set: 'units.tall-1.doors.door-upper.handle', to }] as const
/* Wall unit 2, 300 wide, brought beside tall unit 1: its open handle, 237 to 297 out from its front at 319, lies beside the tall's side, which ends at 560. */

tryRule('door-stops-short', [
  {
    what: 'F45: the handle of an end unit against the wall beside it',
    given: square,
    inside: handle(36),
    outside: handle(41.5),
    weight: 'stop',
    about: ['tall-1', 'd'],
    says: ['42 mm', '3 mm', 'Side wall'],
    waysOut: 2,
  },
  {
    what: 'too near for the readings to tell',
    given: square,
    inside: handle(36),
    outside: handle(39.5),
    weight: 'ask',
    about: ['tall-1', 'd'],
  },
  {
    what: 'a handle nobody has measured, where one of 60 would meet the wall',
    given: square,
    outside: handle(null),
    weight: 'ask',
    about: ['tall-1', 'd'],
  },
  {
    what: 'a door whose hinges hold it short of square is not asked for more',
    given: square,
    inside: [...handle(50), { set: 'units.tall-1.doors.door-upper.opens', to: 85 }],
    outside: handle(50),
    weight: 'stop',
    without: [],
  },
  {
    what: 'a narrow wall unit hinged beside a tall unit: its handle meets the tall unit’s side',
    inside: [],
    outside: [
      { set: 'units.wall-1.doors.door.width', to: 297 },
      { set: 'units.wall-1.width', to: 300 },
      { set: 'units.wall-2.width', to: 600 },
      { set: 'units.wall-2.doors.door.width', to: 597 },
    ],
    weight: 'stop',
    about: ['wall-1', 'tall-1'],
    // The bracket of the narrower unit falls elsewhere among the studs.
    with: ['no-figure-entered', 'second-fixing-needs-timber'],
    without: ['heavy-lift-late'],
  },
])
