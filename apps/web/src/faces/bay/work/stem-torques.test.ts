import { describe, expect, it } from 'vitest'
import { stemTorqueRow, stemTorques } from './stem-torques.ts'

const part = { partNumber: 'TS-DUAL-C', nutLbfIn: 62, screwLbfIn: 12.5 }
const lbfIn = (value: number) => ({ value, unit: 'lbf·in' as const })

describe('the torque of a stem', () => {
  it('is the drawn part’s own, by its stem, before that of the vehicle’s sheet', () => {
    expect(stemTorques(part, 'clamp-in', lbfIn(71))).toEqual([lbfIn(62), lbfIn(71)])
    expect(stemTorques(part, 'snap-in', lbfIn(17))).toEqual([lbfIn(12.5), lbfIn(17)])
    expect(stemTorques(part, 'clamp-in', null)).toEqual([lbfIn(62)])
  })

  it('is one figure where both agree, or only the sheet has one', () => {
    expect(stemTorques(part, 'clamp-in', lbfIn(62))).toEqual([lbfIn(62)])
    expect(stemTorques({ ...part, nutLbfIn: null }, 'clamp-in', lbfIn(71))).toEqual([lbfIn(71)])
    expect(stemTorques(undefined, 'clamp-in', lbfIn(71))).toEqual([lbfIn(71)])
  })

  it('is one press, or a choice that says which goes first, or typed where nobody knows it', () => {
    expect(stemTorqueRow(part, [lbfIn(71)])).toMatchObject({
      kind: 'choice',
      options: [{ label: 'At 71 lbf·in', detail: 'in one pull' }],
    })
    const both = stemTorqueRow(part, [lbfIn(62), lbfIn(71)])
    expect(both).toMatchObject({
      options: [
        { label: 'At 62 lbf·in', detail: 'TS-DUAL-C' },
        { label: 'At 71 lbf·in', detail: 'the vehicle’s sheet' },
      ],
      hint: expect.stringMatching(
        /^TS-DUAL-C asks for 62 lbf·in, the vehicle’s sheet for 71 lbf·in\. .*governs\.$/,
      ),
    })
    expect(stemTorqueRow(part, [])).toMatchObject({ kind: 'number', unit: 'lbf·in', high: 200 })
  })
})
