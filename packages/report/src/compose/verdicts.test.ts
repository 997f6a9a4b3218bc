import { describe, expect, it } from 'vitest'
import { oldRightRearId } from '../../../ledger/test-support/tarn.ts'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { composeReportContent } from '../compose-content.ts'

const content = composeReportContent(workedState, reportContext)

const composed = (change: Partial<typeof workedState>) =>
  composeReportContent({ ...workedState, ...change }, reportContext)

describe('"Is it fixed?" is proven only by what the car holds', () => {
  it('compares IDs as numbers, so a dropped leading zero is the same ID', () => {
    expect(workedState.closing.module?.ids.RR).toBe('A1B2CF7')
    expect(content.pageOne.fixed.word).toBe('Proven')
  })

  it('reads IDs that the vehicle writes in decimal digits', () => {
    const { module } = workedState.closing
    if (!module) throw new Error('the worked state has a closing module read')
    const ids = Object.fromEntries(
      Object.entries(module.ids).map(([position, id]) => [position, BigInt(`0x${id}`).toString()]),
    )
    const report = composed({
      closing: { ...workedState.closing, module: { ...module, notation: 'decimal', ids } },
    })
    expect(report.pageOne.fixed.word).toBe('Proven')
  })

  it('is not proven while the vehicle has nothing stored for one wheel', () => {
    const { module } = workedState.closing
    if (!module) throw new Error('the worked state has a closing module read')
    const { RR: _, ...ids } = module.ids
    const report = composed({ closing: { ...workedState.closing, module: { ...module, ids } } })
    expect(report.pageOne.fixed).toEqual({
      word: 'Not sure yet',
      words:
        'the light was off at the end of 23 minutes of driving, but only 3 of 4 sensors are shown to be recognized by the car',
    })
  })

  it('is not fixed while the vehicle has stored another sensor at a wheel', () => {
    const { module } = workedState.closing
    if (!module) throw new Error('the worked state has a closing module read')
    const ids = { ...module.ids, RR: oldRightRearId }
    const report = composed({ closing: { ...workedState.closing, module: { ...module, ids } } })
    expect(report.pageOne.fixed.word).toBe('Not fixed')
  })
})
