import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { workedCases } from './cases/worked-cases.test-support.ts'
import { diagnose } from './diagnose.ts'
import { Diagnosis } from './diagnosis.ts'
import type { FindingCode } from './finding-codes.ts'

describe('worked cases', () => {
  it('are all there', () => {
    expect(workedCases).toHaveLength(47)
  })

  for (const { name, title, evidence, expected } of workedCases) {
    it(`${name}, ${title}: finds exactly what is expected`, () => {
      const { primary, findings } = diagnose(evidence)
      const found = findings.map(({ code, wheels }) => `${code}@${wheels.join('+')}`)
      const wanted = expected.findings.map(({ code, wheels }) => `${code}@${wheels.join('+')}`)
      expect(found.sort()).toEqual(wanted.sort())
      expect(primary).toBe(expected.primary)
    })

    it(`${name}: the diagnosis has the published form`, () => {
      const diagnosis = diagnose(evidence)
      expect(z.parse(Diagnosis, diagnosis)).toEqual(diagnosis)
    })
  }
})

const diagnosisOf = (name: string) => {
  const found = workedCases.find((one) => one.name === name)
  if (found === undefined) throw new Error(`no case ${name}`)
  return diagnose(found.evidence)
}

const findingIn = (name: string, code: FindingCode) => {
  const finding = diagnosisOf(name).findings.find((one) => one.code === code)
  if (finding === undefined) throw new Error(`${name} has no ${code}`)
  return finding
}

describe('what the cases ask for beyond the names', () => {
  it('a low tire gets a leak search and no sensor', () => {
    const { offers, next, customer } = findingIn('K01', 'tire-low')
    expect(offers).toEqual(['leak-find'])
    expect(next).toBe('Find the leak before only filling.')
    expect(customer).toBe(
      'Your left front tire has 22.0 psi; the door label asks for 35. The light is doing its job.',
    )
  })

  it('a dead sensor is firm with a code, a flash and others that answer', () => {
    expect(findingIn('K02', 'sensor-silent').confidence).toBe('firm')
  })

  it('a slow leak is told with the weather taken out', () => {
    const { because, figures } = findingIn('K05', 'slow-leak')
    // 8.1 psi and 0.90 psi a day by the gas law, by hand: 24.5 psi at 38 °F is 26.9 psi at 68 °F.
    expect(because[0]?.says).toMatch(/^8\.1\d* psi lost in 9 days, 0\.9\d* psi a day/)
    expect(figures.perDay).toBeCloseTo(0.9, 1)
  })

  it('a cold morning is predicted', () => {
    // 29.5 psi at 55 °F is 25.8 psi at 12 °F by the gas law, by hand.
    expect(findingIn('K04', 'cold-morning-margin').figures.value).toBeCloseTo(25.8, 1)
  })

  it('an unexplained fault sells nothing', () => {
    expect(findingIn('K24', 'malfunction-unexplained').offers).toEqual([])
    expect(findingIn('K26', 'receiver-fault').offers).toEqual(['outside-work'])
  })

  it('added devices are likely beside an unexplained fault', () => {
    expect(findingIn('K25', 'interference-suspected').confidence).toBe('likely')
  })

  it('a tire within the hold of a lit lamp is likely, not firm', () => {
    expect(findingIn('M08', 'tire-low').confidence).toBe('likely')
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
