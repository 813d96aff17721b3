import { expect, test } from 'vitest'
import { builtSizes, type Manifest, sceneExists, sizeProblems, sizesOf } from '../support/size-check'

test('the built app is small enough for a phone on a poor line', () => {
  expect(sizeProblems(builtSizes(), sceneExists())).toEqual([])
})

const planted: Manifest = {
  'index.html': {
    file: 'a.js',
    isEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['src/scene/View.tsx'],
  },
  '_shared.js': { file: 's.js' },
  '_three.js': { file: 't.js' },
  'src/scene/View.tsx': { file: 'v.js', isDynamicEntry: true, imports: ['_shared.js', '_three.js'] },
}

test('a chunk shared with the first load counts once, there', () => {
  expect(sizesOf(planted, () => 1000)).toEqual({ firstLoadKb: 2, sceneKb: 2 })
})

test('too much in either part, or 3D in the first load, is reported', () => {
  expect(sizeProblems({ firstLoadKb: 110.1, sceneKb: 290.1 }, true)).toHaveLength(2)
  expect(sizeProblems({ firstLoadKb: 50, sceneKb: undefined }, true)).toHaveLength(1)
  expect(sizeProblems({ firstLoadKb: 110, sceneKb: 290 }, true)).toEqual([])
})
