import { describe, expect, it } from 'vitest'
import { caseNamed } from './cases/worked-cases.test-support.ts'
import { diagnose } from './diagnose.ts'
import type { FindingCode } from './finding-codes.ts'

const diagnosisOf = (name: string) => diagnose(caseNamed(name).evidence)

const findingIn = (name: string, code: FindingCode) => {
  const finding = diagnosisOf(name).findings.find((one) => one.code === code)
  if (finding === undefined) throw new Error(`${name} has no ${code}`)
  return finding
}

describe('what the cases say word for word', () => {
  it('a low tire gets a leak search and no sensor', () => {
    const { offers, next, customer } = findingIn('K01', 'tire-low')
    expect(offers).toEqual(['leak-find'])
    expect(next).toBe('Find the leak before only filling.')
    expect(customer).toBe(
      'Your left front tire has 22.0 psi; the door label asks for 35. The light is doing its job.',
    )
  })

  it('a slow leak is told with the weather taken out', () => {
    const { because, figures } = findingIn('K05', 'slow-leak')
    // 8.1 psi and 0.90 psi a day by the gas law, by hand: 24.5 psi at 38 °F is 26.9 psi at 68 °F.
    expect(because[0]?.says).toMatch(/^8\.1\d* psi lost in 9 days, 0\.9\d* psi a day/)
    expect(figures.perDay).toBeCloseTo(0.9, 1)
  })

  it('a rotation that changes nothing today is a note', () => {
    expect(findingIn('K10', 'rotated-without-relearn').kind).toBe('note')
    expect(findingIn('K11', 'rotated-without-relearn').kind).toBe('also')
  })

  it('stops come first, then the primary', () => {
    expect(diagnosisOf('K57').findings.map(({ code }) => code)).toEqual(['stem-leaking', 'tire-low'])
    expect(diagnosisOf('K50').findings.map(({ code }) => code)).toEqual(['sensor-silent', 'tire-low'])
  })

  it('each stop says what it forbids', () => {
    expect(findingIn('K35', 'run-low-damage-possible').stop).toBe('do-not-drive')
    expect(findingIn('K34', 'sealant-inside').stop).toBe('do-not-open-the-tire')
    expect(findingIn('K57', 'stem-leaking').stop).toBe('repair-before-release')
    expect(findingIn('K01', 'tire-low').stop).toBeUndefined()
  })
})
