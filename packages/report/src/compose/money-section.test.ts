import { spanish } from '@bayledger/wording/es/spanish'
import { expect, it } from 'vitest'
import { coveredComeback } from '../../../ledger/test-support/comeback.ts'
import { reportContext } from '../../test-support/worked-context.ts'
import { moneySection } from './money-section.ts'

const textOf = (section: ReturnType<typeof moneySection>): string => JSON.stringify(section.blocks)

it('prints beside a covered line what it would have cost and until when, in the language of the report', () => {
  const state = coveredComeback()
  expect(textOf(moneySection(state, reportContext))).toMatch(
    /Wheel sensor, 315 MHz.*Covered by our warranty: \$0\.00 \(would be \$\d+\.\d\d\)\. We put in this sensor on order T-2602\. The warranty is good until Jan 12, 2028 or 112,141 miles\./,
  )
  expect(textOf(moneySection(state, { ...reportContext, language: spanish }))).toMatch(
    /Lo cubre nuestra garantía: \$0\.00 \(costaría \$\d+\.\d\d\)\. Pusimos este sensor en la orden T-2602\./,
  )
})
