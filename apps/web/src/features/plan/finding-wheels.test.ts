import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import { describe, expect, it } from 'vitest'
import { findingWheels } from './finding-wheels.ts'

const evidence: Evidence = {
  units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
  vehicle: {
    system: 'direct',
    spare: 'none',
    placard: { front: 35, rear: 35, verified: true },
    loadClass: { front: 'SL', rear: 'SL' },
  },
  light: { lampCheck: 'lights', behavior: 'solid' },
  wheels: { LF: { gauge: 22 }, RF: { gauge: 35 }, RR: { gauge: 34.5 }, LR: {} },
  surroundings: { outdoor: 68, tires: 'cold' },
}
const low = diagnose(evidence).findings.find(({ code }) => code === 'tire-low')
if (!low) throw new RangeError('a tire at 22 psi is found low')

describe('a finding on the drawing', () => {
  const wheels = findingWheels(low, evidence, { word: 'Cause', isCause: true })

  it('marks the wheel that it concerns by shape and word, with its figure', () => {
    expect(wheels.LF?.mark).toEqual({ shape: 'thick', word: 'Cause' })
    expect(wheels.LF?.lines[0]).toEqual({ text: '22.0', unit: 'psi', isFigure: true })
    expect(wheels.LF?.label).toContain('left front: Cause, 22.0 psi')
  })

  it('marks no other wheel, and says what nobody gauged', () => {
    expect([wheels.RF, wheels.RR, wheels.LR].map((wheel) => wheel?.mark)).toEqual([
      undefined,
      undefined,
      undefined,
    ])
    expect(wheels.RR?.lines).toEqual([{ text: '34.5', unit: 'psi' }])
    expect(wheels.LR?.lines).toEqual([{ text: 'not gauged' }])
  })

  it('has no cell for a spare that is not there', () => {
    expect(wheels).not.toHaveProperty('SP')
  })

  it('gives a stop its bar and a short word that fits the cell', () => {
    const stop = { ...low, kind: 'stop', stop: 'do-not-open-the-tire' } as const
    const marked = findingWheels(stop, evidence, { word: 'Do not open the tire', isCause: false })
    expect(marked.LF?.mark).toEqual({ shape: 'bar', word: 'Do not open' })
    expect(marked.LF?.label).toContain('Do not open the tire')
  })
})
