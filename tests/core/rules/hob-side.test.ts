import { tryRule } from '../../support/rule-trial'

// The hob's hole runs from 2 260 to 2 820 mm on Hall partition (3 900 mm). To the tall unit, which ends at 640: 1 620 mm;
// to the wall at its right: 3 900 - 2 820 = 1 080 mm.
const hole = (at: number) => ({ set: 'worktops.worktop-a.cutouts.hob-hole.left', to: { at } }) as const
const asks = (mm: number | null) => ({ set: 'appliances.hob-1.clearTall', to: mm }) as const

tryRule('hob-side', [
  {
    what: 'less beside it than its sheet asks',
    inside: [asks(1070)],
    outside: [asks(1090)],
    weight: 'stop',
    about: ['hob-1'],
    says: ['1 080 mm', '1 090 mm', '10 mm is missing'],
  },
  {
    // Known to some millimetres only; but drawn short it is short, past the half that a printed millimetre is rounded by.
    what: 'a plan drawn a millimetre short of its sheet',
    inside: [asks(1070)],
    outside: [asks(1081)],
    weight: 'stop',
    about: ['hob-1'],
    says: ['1 080 mm', '1 081 mm', '1 mm is missing'],
  },
  {
    what: 'just what its sheet asks',
    inside: [asks(1070)],
    outside: [asks(1080.5)],
    weight: 'ask',
    about: ['hob-1'],
    says: ['met with nothing to spare'],
  },
  {
    what: 'near the tall unit, and nobody has read its sheet',
    given: [asks(null)],
    inside: [hole(960)],
    outside: [hole(930)],
    weight: 'ask',
    beside: ['hob-off-centre', 'hood-gap'],
    about: ['hob-1', 'tall-1'],
    says: ['290 mm'],
  },
])
