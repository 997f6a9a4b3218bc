import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import type { OrderState } from '../state.ts'
import { figureStanding } from './figure-standing.ts'

const state = oneSensorJob('checked').state()
const recorded = state.sheet
if (recorded === null) throw new RangeError('the order has a sheet')
const withSheet = (change: object): OrderState => ({
  ...state,
  figures: {},
  sheet: { ...recorded, sheet: { ...recorded.sheet, ...change } },
})
const source = { kind: 'maker-manual', reference: 'page 4', enteredBy: 'one', verifiedBy: null } as const
const sources = { ...recorded.sheet.sources, studTorque: source }

describe('what a figure of an order is worth', () => {
  it('is what it is worth on the sheet, and where somebody read the same for this vehicle', () => {
    const entered = withSheet({ sources })
    expect(figureStanding(entered, 'studTorque')).toEqual({ worth: 'entered', confirmed: null })
    const confirmed = {
      ...entered,
      figures: { studTorque: { reference: 'page 9', written: recorded.written } },
    }
    expect(figureStanding(confirmed, 'studTorque')).toEqual({ worth: 'entered', confirmed: 'page 9' })
    expect(figureStanding(withSheet({ studs: 'missing' }), 'studTorque')?.worth).toBe('missing')
  })

  it('is said of the procedure by which it learns too, which is only entered where nobody named its source', () => {
    expect(figureStanding(withSheet({}), 'relearn')?.worth).toBe('entered')
    const verified = { ...sources, relearn: { ...source, verifiedBy: 'two' } }
    expect(figureStanding(withSheet({ sources: verified }), 'relearn')?.worth).toBe('verified')
  })

  it('is nothing where the vehicle has no such figure, or the order no sheet', () => {
    expect(figureStanding(withSheet({ sensor: null }), 'frequency')).toBeNull()
    expect(figureStanding({ ...state, sheet: null }, 'studTorque')).toBeNull()
  })
})
