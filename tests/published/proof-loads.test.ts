/**
 * Source: a fastener supplier's table of ISO 898-1 proof loads, coarse threads, read online in 2026
 * (staging2.optimas.com). A proof load is the proof stress on the printed area, rounded to three figures.
 */
import { type PropertyClass, proofStress } from '@bayledger/reckoning/torque/clamp-force'
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { stressArea, threadDiameter } from '@bayledger/reckoning/torque/thread'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const threadOf = (text: string) => {
  const read = readThread(text)
  if (!read.ok) throw new Error(read.do)
  return read.value
}

const loads: readonly (readonly [PropertyClass, string, number])[] = [
  ['8.8', 'M12×1.75', 48_900],
  ['8.8', 'M14×2', 66_700],
  ['8.8', 'M20×2.5', 147_000],
  ['10.9', 'M12×1.75', 70_000],
  ['12.9', 'M12×1.75', 81_800],
]

published(
  { document: 'ISO 898-1', section: "proof loads, a supplier's table", edition: '2026', certainty: 'read' },
  () => {
    it.each([
      ['M12×1.75', 84.3],
      ['M14×2', 115],
      ['M20×2.5', 245],
    ])('%s carries on %d mm²', (text, area) => {
      expect(Number(stressArea(threadOf(text)).toPrecision(3))).toBe(area)
    })

    it.each(loads)('a stud of class %s, %s, holds %i N', (propertyClass, text, load) => {
      const thread = threadOf(text)
      const area = Number(stressArea(thread).toPrecision(3))
      const proofLoad = proofStress(propertyClass, threadDiameter(thread)) * area
      expect(Number(proofLoad.toPrecision(3))).toBe(load)
    })
  },
)
