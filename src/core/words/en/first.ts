/** Words of the first answer: what can be said after ten questions. */
export const firstWords = {
  'first.measured.width': 'The survey holds {value:pm} as the smallest along {wall}.',
  'first.measured.ceiling': 'The survey holds {value:pm} as the lowest.',
  'first.measured.fall': 'The survey holds {value:pm}, from its readings.',
  'first.run.yes':
    'The units on {wall} are {units:pm} together, and the smallest width there is {room:pm}. It looks like fitting: {left:pm} is left for fillers, panels and gaps.',
  'first.run.no':
    'The units on {wall} are {units:pm} together, and the smallest width there is {room:pm}. They are too long by {over:pm}.',
  'first.run.near':
    'The units on {wall} are {units:pm} together, and the smallest width there is {room:pm}. That is too near to tell.',
  'first.tall.yes':
    '{unit} is {height:pm} tall. Tilted up over its {over} without legs it needs {needed:pm}; the lowest ceiling is {ceiling:pm}. It looks like standing up.',
  'first.tall.no':
    '{unit} is {height:pm} tall. Tilted up over its {over} without legs it needs {needed:pm}; the lowest ceiling is only {ceiling:pm}. It cannot be stood up there in one piece.',
  'first.tall.near':
    '{unit} is {height:pm} tall. Tilted up over its {over} without legs it needs {needed:pm}; the lowest ceiling is {ceiling:pm}. That is too near to tell.',
  'first.tall.taller':
    '{unit} is {height:pm} tall and the lowest ceiling is {ceiling:pm}. It does not stand there.',
  'first.tall.open':
    '{unit} is {height:pm} tall and the lowest ceiling is {ceiling:pm}. Whether it can be tilted up waits for its depth.',
  'first.legs.yes': 'The floor falls {fall:pm} and the legs can give {reach:pm}. They look like reaching.',
  'first.legs.no':
    'The floor falls {fall:pm} and the legs can give only {reach:pm}. They are too short by {over:pm}: the low end has to be packed.',
  'first.legs.near': 'The floor falls {fall:pm} and the legs can give {reach:pm}. That is too near to tell.',
  'first.dishwasher.yes':
    'The dishwasher needs {least:pm}. Where the floor is highest there can be up to {room:pm} under the worktop: it looks like going in.',
  'first.dishwasher.no':
    'The dishwasher needs {least:pm}. Where the floor is highest there can be at most {room:pm} under the worktop: {over:pm} too little.',
  'first.dishwasher.near':
    'The dishwasher needs {least:pm}. Where the floor is highest there can be at most {room:pm} under the worktop: too near to tell.',

  'first.drill.region': 'The country is not said, so it is not known where cables may run.',
  'first.drill.asbestos':
    'The house was built in {year}. Homes built before {limit} may hold asbestos: have it looked for before the first hole.',
  'first.drill.year-open': 'Nobody has said when the house was built. An old house may hold asbestos.',
  'first.drill.gas': 'There is gas in the house. Its pipes may run in these walls.',
  'first.drill.nothing-traced': 'Nobody has traced the cables and pipes in the walls.',
  'first.drill.not-traced': 'Cables and pipes have not been traced over the whole of {wall}.',
  'first.drill.not-dead': 'The circuits in and behind {wall} have not been proved dead.',
  'first.drill.kind-open': 'It is not known what {wall} is made of. Do not drill to find out.',
  'first.drill.knock-blown': 'The plaster on {wall} sounds loose. Find out what it still holds on.',
  'first.drill.knock-solid':
    '{wall} sounds solid, and what it is said to be made of would sound hollow. Look again.',
  'first.drill.knock-hollow':
    '{wall} sounds hollow, and what it is said to be made of would sound solid. Look again.',
  'first.drill.plan-first':
    'Drill only at the marks of the plan, and only when its steps of isolating and tracing are done.',

  'first.book.asbestos':
    'A competent asbestos surveyor, before anything is stripped out or drilled: the house is of {year}.',
  'first.book.asbestos-open':
    'A competent asbestos surveyor, unless the house turns out to be younger than {limit}: nobody has said when it was built.',
  'first.book.gas-for':
    'A registered gas engineer, for {appliances}. Touch no gas fitting yourself, and connect nothing to it.',
  'first.book.gas': 'A registered gas engineer. Touch no gas fitting yourself.',
  'first.book.electrician': 'An electrician, to prove dead the circuits in and behind {walls}.',
  'first.book.connect.electrician': 'An electrician, to connect {appliances}.',
  'first.book.connect.plumber': 'A plumber, or someone who can do it right, to connect {appliances}.',
  'first.book.helper': 'A second person: you said you are alone.',
  'first.book.helper-for': 'A second person, for {units}: you said you are alone.',
  'first.book.helper-open': 'A second person, for {units}, if you are alone: nobody has said who is there.',
  'first.book.helper-day': 'A day on which your helper is there, for {units}.',

  'first.borrow.level': 'A line laser, or a long level and a straight batten.',
  'first.borrow.detector': 'A detector for cables, pipes and metal, to trace {walls}.',
  'first.borrow.magnet': 'A strong magnet, to find the studs in {walls} by their screws.',
  'first.borrow.hammer': 'A hammer drill and a vacuum for its dust, for {walls}.',
  'first.borrow.blocks': 'Two blocks of about 20 mm and blankets, to stand the tall unit up.',
  'first.borrow.prop': 'A lifter or props for the wall units.',

  'first.strike.line': 'One level line round the room, at about 1 m. Bring it back to where it began.',
  'first.strike.line-from':
    'One level line round the room, at about 1 m. Begin on {wall} and bring it back to where it began.',
  'first.strike.highest':
    'Read down from it to the floor: it falls {fall:pm}. Mark the highest place under the units; the heights begin there.',
  'first.strike.base-tops':
    'The floor has been read from the line. Next comes the line of the base unit tops, set out from the highest floor.',

  'first.measure.region': 'Say which country this is in.',
  'first.measure.width': 'Measure the smallest width where the units will stand.',
  'first.measure.width-of': 'Measure the smallest width along {wall}.',
  'first.measure.units': 'Read the widths of the units, from left to right, off the delivery list.',
  'first.measure.unit-width': 'Read the width of {unit} off its sheet.',
  'first.measure.wall-kind':
    'Find out what {wall} is made of: knock, look behind a socket with the power off, look at the edge of a doorway.',
  'first.measure.year': 'Find out the year the house was built.',
  'first.measure.gas': 'Find out whether there is gas in the house.',
  'first.measure.people': 'Say who is there to lift.',
  'first.measure.tall': 'Read the height of the tallest unit off its sheet.',
  'first.measure.tall-height': 'Read the height of {unit} off its sheet.',
  'first.measure.tall-depth': 'Read the depth of {unit} off its sheet: it is tilted over it.',
  'first.measure.ceiling': 'Measure the lowest place of the ceiling above the floor.',
  'first.measure.dishwasher': 'Read the least height of the dishwasher, if there is one, off its sheet.',
  'first.measure.fall':
    'Lay a long level over the floor and measure how far it falls where units will stand.',
  'first.measure.again':
    'Measure {wall} and the units on it again: together they may be out by {pm} mm, and that decides it.',
  'first.measure.nine':
    'Measure the width along {wall} at the floor, at worktop height and at the wall units, at the back and at the front.',
  'first.measure.legs': 'Read the shortest and longest length of the legs of the base units off their sheet.',
} as const
