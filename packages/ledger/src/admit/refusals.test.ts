import { describe, expect, it } from 'vitest'
import { answersRefusals } from '../../test-support/refusals/answers.ts'
import { closingRefusals } from '../../test-support/refusals/closing.ts'
import { damageRefusals } from '../../test-support/refusals/damage.ts'
import { estimatesRefusals } from '../../test-support/refusals/estimates.ts'
import { orderRefusals } from '../../test-support/refusals/order.ts'
import { paymentsRefusals } from '../../test-support/refusals/payments.ts'
import { photosRefusals } from '../../test-support/refusals/photos.ts'
import { stepsRefusals } from '../../test-support/refusals/steps.ts'
import { torqueRefusals } from '../../test-support/refusals/torque.ts'
import { wheelsRefusals } from '../../test-support/refusals/wheels.ts'
import { refusalCodes } from './refusal-codes.ts'

const refusals = {
  ...orderRefusals,
  ...stepsRefusals,
  ...estimatesRefusals,
  ...answersRefusals,
  ...paymentsRefusals,
  ...damageRefusals,
  ...wheelsRefusals,
  ...torqueRefusals,
  ...closingRefusals,
  ...photosRefusals,
}

describe('the ledger refuses', () => {
  for (const [code, cases] of Object.entries(refusals))
    for (const [what, attempt, values] of cases)
      it(`${what} (${code})`, () => {
        const verdict = attempt()
        expect(verdict).toMatchObject({ admitted: false, code, values: values ?? {} })
        if (values === undefined && !verdict.admitted) expect(verdict.values).toEqual({})
      })
})

describe('refusal codes', () => {
  it('are each produced by a test', () => {
    expect(Object.keys(refusals).toSorted()).toEqual(refusalCodes.toSorted())
  })
})
