/**
 * A thing by its sort and its mark with no word of them twice: of a `line` marked `line` the line, `line-2` line 2, and of a
 * "door or window" marked `window-1` window 1.
 *
 * @returns undefined where its mark says nothing that its sort does: both have to be said
 */
export function saidOnce(one: string, mark: string): string | undefined {
  const [, stem = mark, number = ''] = /^(.*?)(?:-(\d+))?$/.exec(mark) ?? []
  const words = stem.split('-')
  const own = one.split(/,? or |, |[ -]/)
  if (/ or |, /.test(one)) {
    return words.some((word) => own.includes(word)) ? [...words, number].join(' ').trim() : undefined
  }
  return words.every((word) => own.includes(word)) ? `${one} ${number}`.trim() : undefined
}
