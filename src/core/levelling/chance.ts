/**
 * Numbers from 0 up to 1 that are the same for the same seed: a reading that is given can be given again. A counter
 * stepped by the golden ratio's fraction and mixed (the finaliser of MurmurHash3, which is in the public domain).
 */
export function chanceFrom(seed: number): () => number {
  let at = Math.imul(seed, 0x9e3779b1)
  return () => {
    at = (at + 0x9e3779b9) | 0
    let mixed = at ^ (at >>> 16)
    mixed = Math.imul(mixed, 0x85ebca6b)
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35)
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 0x1_0000_0000
  }
}
