/**
 * The longest rectangle of width `w` that can be carried round a right-angled corner from a corridor `a` wide into one
 * `b` wide, kept flat on the plan: the least over all angles of (a cos θ + b sin θ − w) / (sin θ cos θ), by sliding it
 * with both ends against the outer walls. All mm. Null when it is wider than the narrower corridor: it does not enter.
 *
 * With w = 0 it is the ladder of the textbooks, (a^⅔ + b^⅔)^(3/2). One no longer than either corridor is wide need not
 * turn at all: it goes on sideways.
 */
export function longestRoundCorner(a: number, b: number, w: number): number | null {
  if (w > Math.min(a, b)) return null
  const length = (t: number) => (a * Math.cos(t) + b * Math.sin(t) - w) / (Math.sin(t) * Math.cos(t))
  // One valley between the two walls: the interval is shrunk by the golden section.
  const GOLDEN = (Math.sqrt(5) - 1) / 2
  let [low, high] = [1e-6, Math.PI / 2 - 1e-6]
  let [x, y] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)]
  let [atX, atY] = [length(x), length(y)]
  for (let i = 0; i < 80; i++) {
    if (atX < atY) {
      ;[high, y, atY] = [y, x, atX]
      x = high - GOLDEN * (high - low)
      atX = length(x)
    } else {
      ;[low, x, atX] = [x, y, atY]
      y = low + GOLDEN * (high - low)
      atY = length(y)
    }
  }
  return Math.max(length((low + high) / 2), a, b)
}
