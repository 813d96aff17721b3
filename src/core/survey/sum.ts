import type { Basis, Figure, FigureUnit, InputId, ValueFigure } from '../figure'
import { hasValue, quantise, sortedIds } from '../figure'

/** Place of the first id from `start` on that does not come before this one: in growing strides, then halving. */
function firstNotBefore(ids: readonly InputId[], id: InputId, start: number): number {
  let [low, high] = [start, start]
  for (let stride = 1; high < ids.length && (ids[high] as InputId) < id; stride *= 2) {
    low = high + 1
    high = low + stride
  }
  high = Math.min(high, ids.length)
  while (low < high) {
    const middle = (low + high) >> 1
    if ((ids[middle] as InputId) < id) low = middle + 1
    else high = middle
  }
  return low
}

/** Whether a list of ids holds all of another; both in order and without repeats. */
function holdsAll(ids: readonly InputId[], others: readonly InputId[]): boolean {
  let at = 0
  for (const other of others) {
    at = firstNotBefore(ids, other, at)
    if (ids[at] !== other) return false
    at++
  }
  return true
}

/** Ids of two lists that are each in order and without repeats, the longer first; that one itself where it holds both. */
function merged(a: readonly InputId[], b: readonly InputId[]): readonly InputId[] {
  if (holdsAll(a, b)) return a
  const all: InputId[] = []
  let [i, k] = [0, 0]
  while (i < a.length && k < b.length) {
    const [x, y] = [a[i] as InputId, b[k] as InputId]
    const isNext = x <= y
    all.push(isNext ? x : y)
    if (!isNext || x === y) k++
    if (isNext) i++
  }
  while (i < a.length) all.push(a[i++] as InputId)
  while (k < b.length) all.push(b[k++] as InputId)
  return all
}

/** With more lists than this it is quicker to sort them all together than to take them in one after another. */
const FEW = 6

/** Input ids of several figures, once each and in order; shares the longest list where it holds all the others. */
export function mergedIds(lists: readonly (readonly InputId[])[]): readonly InputId[] {
  const different = [...new Set(lists)]
  let longest: readonly InputId[] = []
  for (const list of different) if (list.length > longest.length) longest = list
  if (different.length <= FEW) {
    return different.reduce((all, list) => (list === longest ? all : mergedPair(all, list)), longest)
  }
  const all = sortedIds(different.flat())
  return all.length === longest.length ? longest : all
}

function mergedPair(a: readonly InputId[], b: readonly InputId[]): readonly InputId[] {
  return a.length < b.length ? merged(b, a) : merged(a, b)
}

/** The figure, resting on these facts too: choices that make it exist. The same as `restingOn`, for lists in order. */
export function citing(figure: Figure, facts: readonly InputId[]): Figure {
  const from = mergedIds([figure.from, facts])
  return from === figure.from ? figure : { ...figure, from }
}

function unknownOf(
  unit: FigureUnit,
  basis: Basis,
  figures: readonly Figure[],
  from: readonly InputId[],
): Figure {
  const missing = sortedIds(figures.flatMap((figure) => (hasValue(figure) ? [] : figure.missing)))
  return { state: 'unknown', unit, basis, from, missing }
}

/**
 * Some figures added up, others taken off. The same as `derive` gives for a sum (unknown if any is unknown, the
 * precisions added), without working it out once for each of them: most of setting out is sums.
 */
export function sum(
  unit: FigureUnit,
  basis: Basis,
  plus: readonly Figure[],
  minus: readonly Figure[] = [],
): Figure {
  const all = [...plus, ...minus]
  const from = mergedIds(all.map((figure) => figure.from))
  if (!all.every(hasValue)) return unknownOf(unit, basis, all, from)
  let value = 0
  let pm = 0
  for (const figure of plus as readonly ValueFigure[]) value += figure.value
  for (const figure of minus as readonly ValueFigure[]) value -= figure.value
  for (const figure of all) pm += figure.pm
  const state = all.some((figure) => figure.state === 'assumed') ? 'assumed' : 'known'
  return { state, value: quantise(value), pm: quantise(pm), unit, basis, from }
}
