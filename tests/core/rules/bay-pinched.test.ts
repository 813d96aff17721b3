import { tryRule } from '../../support/rule-trial'

const asks = (to: number) => ({ set: 'appliances.dishwasher-1.widthNeeded', to }) as const
// The run on Garden wall ends with its end panel at 2 508 mm; the space for the dishwasher is 600 mm wide.
const mouth = (value: number) =>
  ({
    add: 'walls.b.widths',
    item: { id: 'w-front', at: 'floor', depth: 'front', width: { value, pm: 1 } },
  }) as const

tryRule('bay-pinched', [
  {
    what: 'a space planned narrower than the sheet asks',
    inside: [asks(600)],
    outside: [asks(606)],
    weight: 'stop',
    about: ['dishwasher-1', 'dishwasher-space'],
    says: ['600 mm', '606 mm', '6 mm is missing'],
    waysOut: 1,
  },
  {
    what: 'a run longer than its alcove at the mouth',
    inside: [mouth(2510)],
    outside: [mouth(2490)],
    weight: 'stop',
    about: ['dishwasher-space'],
    with: ['run-too-long'],
    // 2 508 - 2 490 = 18 mm too long: 582 mm are left of 600.
    says: ['at its front', '582 mm', '18 mm is missing'],
  },
])
