/** A text in its sentences; a point within a figure ends none. */
export function sentences(text: string): readonly string[] {
  return text.split(/(?<=[.?])\s+(?=\p{Lu})/u)
}
