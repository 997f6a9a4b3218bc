/**
 * Source: a public thread table, UNF (boltport.com/threads/unf), read online in 2026: tensile stress areas in square
 * inches, to one in the last place that it prints: its 0.1599 for 1/2-20 is 0.15995 cut, not rounded.
 */
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { stressArea } from '@bayledger/reckoning/torque/thread'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'A public thread table', section: 'UNF', edition: '2026', certainty: 'read' }, () => {
  it.each([
    ['7/16-20', 0.1187, 4],
    ['1/2-20', 0.1599, 4],
    ['9/16-18', 0.203, 3],
  ])('%s carries on %d in²', (text, squareInches, digits) => {
    const read = readThread(text)
    if (!read.ok) throw new Error(read.do)
    const area = stressArea(read.value) / 25.4 ** 2
    expect(Math.abs(area - squareInches)).toBeLessThan(10 ** -digits)
  })
})
