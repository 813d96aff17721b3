/** Blanks have nothing but their place to be told apart by. */
export const placed = <T>(list: readonly T[]): readonly { readonly place: number; readonly item: T }[] =>
  list.map((item, place) => ({ place, item }))
