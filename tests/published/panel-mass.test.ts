import { expect, test } from 'vitest'
import { known } from '../../src/core/figure'
import { backDensity, panelMass, particleboardDensity } from '../../src/core/lifting/board-density'
import { carcassArea, doorMass, shelfArea } from '../../src/core/lifting/panel-mass'
import { plain } from '../support/fixed-wall'

// Golden figures by own arithmetic: carcass 600 × 720 × 560 of 18 mm at 650 kg/m³, two sides, bottom, two rails of 100 and
// one shelf 500 deep: 1.517 m², 17.75 kg. The same without the shelf 1.235 m², 14.45 kg.
test('a base carcass of 600 with one shelf: 1.517 m², 17.75 kg', () => {
  const area = carcassArea(600, 720, 560, 18, false) + shelfArea(600, 560, 18)
  expect(area / 1e6).toBeCloseTo(1.517, 3)
  expect(panelMass(area, 18, particleboardDensity(18))).toBeCloseTo(17.75, 2)
})

test('a door 597 × 717 × 18 at 740 kg/m³: 5.70 kg', () => {
  const mm = (value: number) => known(value, 0, 'mm', [])
  const unweighed = { state: 'unknown', unit: 'kg', basis: { kind: 'maker' }, from: [], missing: [] } as const
  const door = { mass: unweighed, width: mm(597), height: mm(717), thickness: mm(18) }
  expect(Number(plain(doorMass(door)))).toBeCloseTo(5.7, 2)
})

/** Density and mass of a square metre of P2 particleboard: a maker's sheet to EN 312, and own arithmetic. */
test.each([
  [15, 670, 10.05],
  [16, 660, 10.56],
  [18, 650, 11.7],
  [19, 650, 12.35],
  [22, 640, 14.08],
  [25, 640, 16.0],
  [38, 600, 22.8],
])('board of %d mm: %d kg/m³, %d kg/m²', (thickness, density, perSquareMetre) => {
  expect(particleboardDensity(thickness)).toBe(density)
  expect(panelMass(1e6, thickness, density)).toBeCloseTo(perSquareMetre, 6)
})

test('between its rows the table runs straight, beyond them it stays', () => {
  expect(particleboardDensity(17)).toBe(655)
  expect(particleboardDensity(6)).toBe(700)
  expect(particleboardDensity(50)).toBe(600)
})

test('a thin back is of fibreboard', () => {
  expect([3, 8, 8.1, 18].map(backDensity)).toEqual([860, 860, 700, 650])
})

test('mass is linear in thickness and in density, and panels add up', () => {
  expect(panelMass(2e6, 18, 650)).toBeCloseTo(2 * panelMass(1e6, 18, 650), 9)
  expect(panelMass(1e6, 36, 650)).toBeCloseTo(2 * panelMass(1e6, 18, 650), 9)
  const whole = carcassArea(600, 720, 300, 18, true)
  expect(whole).toBe(2 * 720 * 300 + 2 * 564 * 300)
})
