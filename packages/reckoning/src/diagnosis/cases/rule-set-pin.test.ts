import { describe, expect, it } from 'vitest'
import { pinFault, pinOfToday, readPin } from './rule-set-pin.test-support.ts'

describe('the number of the rule set', () => {
  it('is raised whenever the same evidence leads to another diagnosis', () => {
    expect(pinFault(readPin(), pinOfToday())).toBeNull()
  })

  const pin = { ruleSet: '7', digests: { K01: 'aa', K02: 'bb' } }

  it('must be raised when a case says something else under the same number', () => {
    const fault = pinFault(pin, { ruleSet: '7', digests: { K01: 'aa', K02: 'cc' } })
    expect(fault).toContain('another diagnosis in K02, and the rule set is still number 7')
    expect(fault).toContain('raise ruleSetVersion')
  })

  it('is pinned again once it is raised, or when a case comes or goes', () => {
    const again = /: run npm run cases:pin\.$/
    expect(pinFault(pin, { ruleSet: '8', digests: { K01: 'aa', K02: 'cc' } })).toMatch(again)
    expect(pinFault(pin, { ruleSet: '8', digests: pin.digests })).toMatch(again)
    expect(pinFault(pin, { ruleSet: '7', digests: { ...pin.digests, K03: 'dd' } })).toMatch(again)
    expect(pinFault(pin, { ruleSet: '7', digests: { K01: 'aa' } })).toMatch(again)
    expect(pinFault(pin, pin)).toBeNull()
  })
})
