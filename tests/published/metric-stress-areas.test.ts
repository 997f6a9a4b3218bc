/**
 * Source: ISO 898-1, nominal stress areas: π/4 · (d − 0.938194 P)². The formula is from memory, the areas were worked
 * from it by hand to a hundredth; the standard prints three figures.
 */
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { stressArea } from '@bayledger/reckoning/torque/thread'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rows = [
  ['M12×1.25', 92.07, 92.1],
  ['M12×1.5', 88.13, 88.1],
  ['M12×1.75', 84.27, 84.3],
  ['M14×1.5', 124.55, 125],
  ['M14×2', 115.44, 115],
] as const

const areaOf = (text: string): number => {
  const read = readThread(text)
  if (!read.ok) throw new Error(read.do)
  return stressArea(read.value)
}

published({ document: 'ISO 898-1', section: 'nominal stress areas', certainty: 'from memory' }, () => {
  it.each(rows)('%s carries on %d mm²', (text, area) => {
    expect(areaOf(text)).toBeCloseTo(area, 2)
  })

  it.each(rows)('%s: %d mm² is printed as %d', (text, _area, printed) => {
    expect(Number(areaOf(text).toPrecision(3))).toBe(printed)
  })
})
