import { describe, expect, it } from 'vitest'
import { type CustomerCautionNumber, customerCaution, customerCautionVersions } from './customer-cautions.ts'

describe('a customer caution', () => {
  it('is named by its number and its present version', () => {
    expect(customerCaution('CT-01')).toEqual({ number: 'CT-01', version: 2 })
  })

  it('is there for every case that the shop warns of, and no version of one is left out', () => {
    const numbers = Array.from({ length: 18 }, (_, index) => `CT-${String(index + 1).padStart(2, '0')}`)
    expect(Object.keys(customerCautionVersions)).toEqual(numbers)
    for (const number of numbers as CustomerCautionNumber[]) {
      const versions: readonly number[] = customerCautionVersions[number]
      expect(versions, number).toEqual(versions.map((_, index) => index + 1))
    }
  })
})
