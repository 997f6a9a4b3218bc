import { describe, expect, it } from 'vitest'
import { vinHint } from './vin-hint.ts'

describe('the words under the VIN', () => {
  it('require 17 characters until they are there', () => {
    expect(vinHint('')).toContain('leave empty')
    expect(vinHint('1ZZ12AB4XR')).toContain('17 characters')
  })

  it('name the model year of a good one and the fault of a bad one', () => {
    expect(vinHint('1ZZ12AB4XR0000004')).toContain('model year 2024')
    expect(vinHint('1ZZ12AB40R0000004')).toContain('check digit X')
  })

  it('pass on advice where the check digit need not be right', () => {
    expect(vinHint('ZZZ9876B0B1000002')).toContain('Outside North America')
  })
})
