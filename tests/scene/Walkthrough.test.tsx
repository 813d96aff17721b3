import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { expect, test } from 'vitest'
import { standingAt } from '../../src/core/plan/standing-at'
import { makeViews } from '../../src/core/views/views'
import { sceneWords } from '../../src/core/words/en/scene'
import { labelsOf } from '../../src/scene/labels/labels-of'
import { Walkthrough } from '../../src/scene/Walkthrough'
import { sampleIndex, samplePlan } from '../support/sample-plan'

async function textOf(plan: typeof samplePlan): Promise<string> {
  const place = document.body.appendChild(document.createElement('div'))
  const root = createRoot(place)
  await act(async () => root.render(<Walkthrough plan={plan} index={0} t={0} reducedMotion />))
  const text = place.textContent ?? ''
  await act(async () => root.unmount())
  place.remove()
  return text
}

test('without WebGL it says so instead of staying blank', async () => {
  expect(await textOf(samplePlan)).toContain(sceneWords['scene.no-webgl'])
})

test('without a wall that has a place it says what is missing', async () => {
  const nowhere = { ...samplePlan, walls: samplePlan.walls.map((w) => ({ ...w, placed: false })) }
  expect(await textOf(nowhere)).toContain(sceneWords['scene.nothing-placed'])
})

test('the texts name the part in hand, where it goes and the lines of its wall, all with words', () => {
  const index = sampleIndex('hang:wall-2')
  const views = makeViews(samplePlan, 1.6)
  const standing = standingAt(samplePlan, index, 0)
  const labels = labelsOf(samplePlan, standing, views.at(index), views.room, 'mm')
  const texts = labels.map((l) => l.text)
  expect(texts).toContain('wall unit 2')
  expect(texts).toContain('1\u202f220 mm')
  expect(texts.filter((t) => t.startsWith('[no '))).toEqual([])
  expect(texts.some((t) => t.includes('+400'))).toBe(true)
  expect(new Set(labels.map((l) => l.id)).size).toBe(labels.length)
})
