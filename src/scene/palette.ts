/** Colours of the picture: the tokens of the look, and the shades of them that flat light makes. */
export const palette = {
  plaster: '#E9E2D5',
  plasterShade: '#DDD4C4',
  paper: '#FBF8F1',
  ink: '#262522',
  pencil: '#5C574E',
  hair: '#CFC6B6',
  chalk: '#1F5FA8',
  /** What edges the thing in hand. */
  chalkDeep: '#174C88',
  brass: '#7C5413',
  timber: '#D9B98A',
  timberEdge: '#8A6433',
  refused: '#9B2423',
  levelGreen: '#237F52',
  /** Lines struck earlier that nobody goes by now. */
  chalkQuiet: '#5A83B2',
} as const

/** Walls by the way they face, floor, and what lies on them. */
export const roomShade = {
  /** One soft light on the wall most units are for and those that face its way, the others a shade deeper. */
  wallLit: '#EEE5D7',
  wallAside: '#E5DDCA',
  floor: '#DACFB8',
  board: '#CBBDA0',
  opening: '#F6F1E6',
  boxing: '#E3DACA',
  band: '#BF5F33',
  studFill: '#E6D3B3',
  /** Studs while nobody drills for them. */
  studFaint: '#EADECB',
  studFaintEdge: '#CDB899',
  placeWash: '#2E76C8',
} as const

/** One set of shades for the six ways a board of a carcass can face, and for what is inside it. */
export interface BoardShades {
  readonly edge: string
  readonly outer: string
  readonly outerLit: string
  readonly top: string
  readonly under: string
  readonly inner: string
  readonly innerLit: string
  readonly back: string
  readonly shelf: string
  readonly line: string
}

export const quietBoard: BoardShades = {
  edge: '#FBF8F1',
  outer: '#EFE9DC',
  outerLit: '#F4EFE4',
  top: '#F6F1E7',
  under: '#D8CFBE',
  inner: '#DFD8CA',
  innerLit: '#E7E1D4',
  back: '#D6CCBB',
  shelf: '#EFE7D8',
  line: palette.pencil,
}

/** The part in hand: pale, edged in chalk blue. */
export const handBoard: BoardShades = {
  edge: '#FBFCFD',
  outer: '#E4EAF0',
  outerLit: '#EAEFF4',
  top: '#F3F6F9',
  under: '#CBD5DF',
  inner: '#D6DEE6',
  innerLit: '#DFE6EC',
  back: '#C9D3DD',
  shelf: '#E8EDF2',
  line: palette.chalkDeep,
}

/** BS 1710 basic colours, darkened where the plain one would be lost on plaster. */
export const serviceColour: Readonly<Record<string, string>> = {
  cable: '#C8641E',
  'water-cold': '#237F52',
  'water-hot': '#237F52',
  heating: '#237F52',
  gas: '#8A7422',
  waste: '#262522',
  duct: '#4E87A0',
  'not-known': palette.pencil,
}
