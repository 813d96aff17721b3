/** Short texts written on the 3D picture. */
export const sceneWords = {
  'scene.line.line': 'the line {height}',
  'scene.line.base-underside': 'base underside {height:signed}',
  'scene.line.base-top': 'base top {height:signed}',
  'scene.line.worktop-top': 'worktop {height:signed}',
  'scene.line.wall-underside': 'underside {height:signed}',
  'scene.line.wall-top': 'top {height:signed}',
  'scene.line.tall-underside': 'tall underside {height:signed}',
  'scene.line.tall-top': 'tall top {height:signed}',
  'scene.line.plate': 'plate edge {height:signed}',
  'scene.line.rail': 'rail edge {height:signed}',
  'scene.line.bracket': 'brackets {height:signed}',
  'scene.keep-clear': 'keep clear',
  'scene.refused': 'not here',
  'scene.context-lost': 'The picture has stopped and will come back by itself. The words beside it go on.',
  'scene.no-webgl': 'This browser can’t draw the 3D picture. Everything it shows is in the words.',
  'scene.nothing-placed': 'No wall has a known length and corner yet, so there is no room to draw.',
} as const
