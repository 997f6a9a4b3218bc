import type { WheelShortfall } from '@bayledger/reckoning/diagnosis/facts/wheel-shortfall'
import { describe, expect, it } from 'vitest'
import { shortfalls } from './en/shortfalls.ts'
import { shortfalls as spanish } from './es/shortfalls.ts'
import { shortfallWords } from './shortfalls.ts'

const said = (lacks: number, why: WheelShortfall['why']) =>
  shortfallWords(shortfalls, { wheel: 'LF', lacks, why })
const parts = { byTemperature: 3.3, byAltitude: 0, byLostAir: 2.8, isBeyondError: true, most: 1.6 }

describe('what a tire lacks', () => {
  it('is colder air and lost air, each with its figure', () => {
    expect(said(6.1, parts)).toBe(
      'When it is cold, this tire has 6.1 psi less than it should. Colder air took 3.3 psi. 2.8 psi of air got out, if the tire was set to the door label.',
    )
  })

  it('shows no loss where the rest is within what gauges can be off by', () => {
    const words = said(4.2, { ...parts, byLostAir: 0.9, isBeyondError: false })
    expect(words).toContain(
      'The rest is less than gauges can be off by (1.6 psi), so this shows no lost air.',
    )
    expect(words).not.toContain('got out')
  })

  it('counts what warmth and altitude added', () => {
    expect(said(2, { ...parts, byTemperature: -3, byAltitude: -1, byLostAir: 6 })).toBe(
      'When it is cold, this tire has 2.0 psi less than it should. It is warmer than when the tire was set, and that added 3.0 psi. The higher altitude added 1.0 psi. 6.0 psi of air got out, if the tire was set to the door label.',
    )
  })

  it('says so where it was set higher, or stands lower', () => {
    expect(said(2, { ...parts, byTemperature: 6, byAltitude: 1, byLostAir: -5 })).toContain(
      'The lower altitude took 1.0 psi. The tire was set higher than the door label, or air was added: 5.0 psi.',
    )
  })

  it('says which temperature is missing', () => {
    expect(said(6, 'setting-not-known')).toContain('nobody could say how warm it was')
    expect(said(6, 'outdoor-not-known')).toContain('the outdoor temperature was not noted')
  })

  it('has the same figures in Spanish', () => {
    const words = shortfallWords(spanish, { wheel: 'LF', lacks: 6.1, why: parts })
    expect(words.match(/\d\.\d/g)).toEqual(['6.1', '3.3', '2.8'])
  })
})
