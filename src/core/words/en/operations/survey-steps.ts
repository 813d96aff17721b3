/** Words of the work: striking the line and reading the floor. */
export const surveyStepsWords = {
  'operation.strike.title': 'Strike the line',
  'operation.strike.reverse':
    'Prove the laser first, between two facing walls of any room: turned round, it may be out by 1 mm over 5 m.',
  'operation.strike.round':
    'Strike one level line on every wall that gets units ({walls}), and come back with it to where it began: it must meet itself.',
  'operation.strike.height':
    'Set it {above} above the highest floor that counts, {where}, so that the figures here hold.',
  'operation.strike.height.unknown': 'Set it about a metre above the floor, then read the floor from it.',
  'operation.strike.zero':
    'This line is height 0. Measure everything from it, up (+) or down (−), never from the floor.',

  'operation.read-floor.title': 'Read the floor',
  'operation.read-floor.read':
    'Read the drop from the line to the floor at the places of the survey ({count}), front and back of each run.',
  'operation.read-floor.sign': 'Mind the sign: a bigger drop is a lower floor.',
  'operation.read-floor.high-point': 'The highest floor that counts is under {where}, {drop} below the line.',
  'operation.read-floor.high-point.unknown':
    'The highest floor is not known yet: read at every foot and bay, and enter what you read.',
  'operation.read-floor.fall': 'Under the units the floor falls {fall} in all.',
  'operation.read-floor.fall.unknown': 'How much the floor falls is not known yet.',
  'operation.read-floor.compare': 'Where a drop is more than 1 mm off the survey, enter it before you go on.',
}
