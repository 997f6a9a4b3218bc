import { describe, expect, it } from 'vitest'
import { caseNamed, workedCases } from './cases/worked-cases.test-support.ts'
import { diagnose, findingsOf } from './diagnose.ts'
import type { FindingCode } from './finding-codes.ts'

const diagnosisOf = (name: string) => diagnose(caseNamed(name).evidence)

const findingIn = (name: string, code: FindingCode) => {
  const finding = diagnosisOf(name).findings.find((one) => one.code === code)
  if (finding === undefined) throw new Error(`${name} has no ${code}`)
  return finding
}

describe('what the cases say', () => {
  it('a low tire gets a leak search and no sensor', () => {
    const { offers, because, figures } = findingIn('K01', 'tire-low')
    expect(offers).toEqual(['leak-find'])
    expect(because).toEqual([
      {
        field: 'wheels.LF.gauge',
        value: 22,
        unit: 'psi',
        code: 'at-or-under-warning-point',
        values: { point: 26.25, unit: 'psi' },
      },
    ])
    expect(figures).toEqual({ wheel: 'LF', value: 22, label: 35, difference: 13, unit: 'psi' })
  })

  it('a slow leak is measured with the weather taken out', () => {
    const { because, figures } = findingIn('K05', 'slow-leak')
    // 8.1 psi and 0.90 psi a day by the gas law, by hand: 24.5 psi at 38 °F is 26.9 psi at 68 °F.
    expect(because[0]).toMatchObject({ code: 'lost-since-reading', values: { days: 9, unit: 'psi' } })
    expect(because[0]?.values.drop).toBeCloseTo(8.1, 1)
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
    // A stem that leaks and a tire that is worn out close the road and keep the keys here, without "do not drive".
    expect(findingIn('tire-unsafe-fires', 'tire-unsafe').stop).toBe('repair-before-release')
    for (const finding of [findingIn('K57', 'stem-leaking'), findingIn('tire-unsafe-fires', 'tire-unsafe')])
      expect(finding.holds).toEqual(expect.arrayContaining(['road', 'hand-back']))
  })
})

it('the findings alone are those of the whole diagnosis', () => {
  for (const { evidence } of workedCases) expect(findingsOf(evidence)).toEqual(diagnose(evidence).findings)
})
