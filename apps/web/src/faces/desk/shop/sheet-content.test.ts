import { SheetContent } from '@bayledger/contract/sheets'
import { blankSheet } from '@bayledger/reckoning/sheet'
import { printedFrom } from '@bayledger/reckoning/units/printed-pressure'
import { describe, expect, it } from 'vitest'
import { sheets } from '../../../../../../prisma/seeds/demo/sheets.ts'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { sheetContentIn, sheetValues } from './sheet-content.ts'
import { sheetRows } from './sheet-rows.ts'
import { contentOf } from './sheet-source.ts'

const every = Object.entries(sheets).map(([name, sheet]) => [name, contentOf(sheet)] as const)

describe('a sheet as rows', () => {
  it.each([...every, ['blank', { ...blankSheet('A kind'), verified: {} }] as const])(
    'of %s comes back as it was, and none of its rows is at fault',
    (_, content) => {
      const values = sheetValues(content)
      expect(sheetContentIn(values)).toEqual(content)
      expect(SheetContent.safeParse(sheetContentIn(values)).success).toBe(true)
      expect(recordFaultsOf(sheetRows(values), values)).toEqual({})
    },
  )

  it('keeps the source of what may do without one, and asks where in it only once there is one', () => {
    const content = {
      ...contentOf(sheets.linnet),
      liftNotes: 'Use the front point.',
      sources: {
        ...contentOf(sheets.linnet).sources,
        relearn: { kind: 'maker-manual', reference: 'Owner’s book, page 212' },
        system: { kind: 'own-measurement', reference: 'read at the vehicle' },
        lifting: { kind: 'memory', reference: 'the lead' },
      },
    } as const
    const values = sheetValues(content)
    expect(sheetContentIn(values)).toEqual(content)
    expect(recordFaultsOf(sheetRows(values), values)).toEqual({})
    const keys = (of: typeof values) => sheetRows(of).map(({ key }) => key)
    expect(keys(values)).toContain('sources.relearn.reference')
    expect(keys({ ...values, 'sources.relearn.kind': '' })).not.toContain('sources.relearn.reference')
    const half = { ...values, 'sources.relearn.reference': '' }
    expect(Object.keys(recordFaultsOf(sheetRows(half), half))).toEqual(['sources.relearn.reference'])
  })

  it('keeps a label as it was typed in bar, until somebody types another figure in psi', () => {
    const printed = printedFrom({ value: 2.3, unit: 'bar' })
    const placard = { front: printed, rear: printed, spare: null }
    const content = {
      ...contentOf(sheets.linnet),
      spare: 'none',
      placard,
      tire: { ...sheets.linnet.tire, spare: null },
    } as const
    const values = sheetValues(content)
    expect(sheetContentIn(values).placard).toEqual(placard)
    expect(sheetContentIn({ ...values, 'placard.front.psi': '35' }).placard).toEqual({
      ...placard,
      front: { psi: 35, kPa: null },
    })
  })

  it('asks whether a label of 230 psi is in kPa', () => {
    const values = { ...sheetValues(every[0]?.[1] ?? contentOf(sheets.linnet)), 'placard.front.psi': '230' }
    expect(recordFaultsOf(sheetRows(values), values)).toEqual({
      'placard.front.psi': expect.stringMatching(/kPa/),
    })
  })
})
