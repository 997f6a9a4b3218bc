import { describe, expect, it } from 'vitest'
import { closingRefusals } from '../../test-support/refusals/closing.ts'
import { estimatesRefusals } from '../../test-support/refusals/estimates.ts'
import { orderRefusals } from '../../test-support/refusals/order.ts'
import { stepsRefusals } from '../../test-support/refusals/steps.ts'
import { torqueRefusals } from '../../test-support/refusals/torque.ts'
import { wheelsRefusals } from '../../test-support/refusals/wheels.ts'
import { refusalCodes } from './refusal.ts'

const refusals = {
  ...orderRefusals,
  ...stepsRefusals,
  ...estimatesRefusals,
  ...wheelsRefusals,
  ...torqueRefusals,
  ...closingRefusals,
}

describe('the ledger refuses', () => {
  for (const [code, cases] of Object.entries(refusals))
    for (const [what, attempt] of cases)
      it(`${what} (${code})`, () => {
        const verdict = attempt()
        expect(verdict).toMatchObject({ admitted: false, code })
        if (!verdict.admitted) expect(verdict.words).toMatch(/^[A-Z0-9"].{20,}[.]$/s)
      })
})

describe('refusal codes', () => {
  it('are each produced by a test, save the one that only the database can find', () => {
    const others = refusalCodes.filter((code) => code !== 'ORDER_PARTS_UNKNOWN')
    expect(Object.keys(refusals).toSorted()).toEqual(others.toSorted())
  })
})
