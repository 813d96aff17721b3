import { tryRule } from '../../support/rule-trial'

// Garden wall has seven studs found by both edges; brackets go to b-s2 and b-s3 (base unit 4), b-s4 and b-s5 (sink unit).
const doubtful = (...studs: readonly string[]) =>
  studs.map((stud) => ({ set: `walls.b.studs.${stud}.confirmed`, to: 'not-found' }) as const)

tryRule('few-studs', [
  {
    what: 'two studs found for certain, where three would tell the spacing',
    inside: [],
    outside: doubtful('b-s1', 'b-s3', 'b-s5', 'b-s6', 'b-s7'),
    weight: 'ask',
    about: ['b'],
    says: ['Only 2 of the studs in Garden wall'],
    with: ['stud-not-confirmed'],
  },
])
