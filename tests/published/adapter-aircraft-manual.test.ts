/**
 * Source: a page of an aircraft's maintenance manual, read online in 2026 (easymanua.ls): 10 in with 1.5 in, 135
 * wanted: 117.39 on the scale with the adapter ahead, 158.82 with the adapter pointing back.
 */
import { expect, it } from 'vitest'
import { inches, readingFor, torqueAt } from './adapter-lengths.ts'
import { published } from './published.ts'

published(
  { document: "An aircraft's maintenance manual", section: 'torque adapters', certainty: 'read' },
  () => {
    it.each([
      [1.5, 117.39],
      [-1.5, 158.82],
    ])('135 is applied with %d in at %d on the scale', (offset, reading) => {
      expect(readingFor(135, inches(10, offset))).toBeCloseTo(reading, 2)
    })

    it.each([
      [1.5, 117.39],
      [-1.5, 158.82],
    ])('with %d in, %d on the scale applies 135', (offset, reading) => {
      expect(torqueAt(reading, inches(10, offset))).toBeCloseTo(135, 1)
    })
  },
)
