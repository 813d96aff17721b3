/** Words about the plan as a whole: what changed, what to measure next. */
export const planWords = {
  'change-figure': '{what} was {was}, is now {is}.',
  'change-gone': '{what} ({was}) is no longer there.',
  'change-operation-new': 'New work: {operation}.',
  'change-operation-gone': 'No longer needed: {operation}.',
  'measure-this': 'Find out: {what}. {settles} figures wait for it.',
  'measure-this.one': 'Find out: {what}. One figure waits for it.',
  'region-not-chosen':
    'Choose the country. Where cables may run and who must be called differs from country to country, and no hole can be judged until you choose.',
  'assumed-figures':
    'Nobody has confirmed these {count} sizes, so usual ones stand in for them: {which}. Every figure that rests on one says “assumed”.',
  'assumed-figures.resting':
    '{count} figures rest on usual sizes that nobody has confirmed, such as the thickness of a plate or bracket, or the density of board. Each says “assumed”.',
  'stand-up-not-known':
    'Measure the ceiling over the whole swing of {unit}. Whether it can be stood up cannot be told: it swings through {needed}, and the room over it is {ceiling}.',
  'in-one-another': '{unit} and {other} overlap by {by} mm where they end up.',
  'floor-not-read-under':
    '{unit} reaches past the floor readings. Guessed from them, the floor there comes {by} mm over its underside.',
  'floor-not-read-under.ask': 'Read the floor under each corner of {unit}.',
  'cannot-stand-up':
    '{unit} cannot be stood up here: it swings through {needed}, and there is {ceiling} from floor to ceiling. Build it standing, or take its legs off and tip it over its narrow side if that fits.',
  'stand-up-legs-off':
    '{unit} cannot be stood up with its legs on: it would need {withLegsOn} under a ceiling of {ceiling}, {short} more than there are. With its legs off it needs {needed}. Put them on once it stands.',
  'stand-up-elsewhere.left':
    'Do not stand {unit} up where it is to stand: it swings through {needed}, and there is only {ceiling} from floor to ceiling. Stand it up {by} further left, where there is more. Then walk it in upright.',
  'stand-up-elsewhere.right':
    'Do not stand {unit} up where it is to stand: it swings through {needed}, and there is only {ceiling} from floor to ceiling. Stand it up {by} further right, where there is more. Then walk it in upright.',
  'stand-up-elsewhere.out':
    'Do not stand {unit} up close to where it is to stand: it swings through {needed}, and there is only {ceiling} from floor to ceiling. Stand it up {by} further out from the wall, where there is more. Then walk it in upright.',
  'wall-cuts-in': '{other} leans or turns into {unit} by {by} mm: leave that gap and a filler, or scribe.',
  'no-way-in-between': '{unit} has no way in: these units wait for one another: {others}.',
} as const
