import { describe, expect, it } from 'vitest'
import { parseEvidence } from './evidence.ts'

const units = { pressure: 'psi', temperature: 'F', altitude: 'ft' }

const faultsOf = (input: unknown) => {
  const parsed = parseEvidence(input)
  return parsed.ok ? [] : parsed.faults
}

describe('evidence', () => {
  it('may hold nothing but its units', () => {
    expect(parseEvidence({ units })).toEqual({ ok: true, evidence: { units } })
  })

  it('takes null for what was not checked', () => {
    const input = {
      units,
      wheels: { LF: { gauge: null, answer: null }, SP: null },
      light: null,
      events: null,
    }
    expect(parseEvidence(input)).toEqual({ ok: true, evidence: input })
  })

  it('refuses an unknown field and an unknown member of a closed list, naming what is known', () => {
    expect(faultsOf({ units, light: { behaviour: 'solid', lampCheck: 'dim' } })).toEqual([
      { field: 'light.lampCheck', found: '"dim"', allowed: 'one of lights, dark' },
      {
        field: 'light.behaviour',
        found: '"solid"',
        allowed: 'no field of this name; known here are lampCheck, reported, behavior',
      },
    ])
  })

  it('bounds pressures, temperatures and altitudes in the units that it is given in', () => {
    const gauge = (value: number, pressure: string) =>
      faultsOf({ units: { ...units, pressure }, wheels: { RR: { gauge: value } } }).length
    expect([gauge(400, 'psi'), gauge(401, 'psi'), gauge(-20, 'psi'), gauge(-21, 'psi')]).toEqual([0, 1, 0, 1])
    expect([gauge(2_757, 'kPa'), gauge(2_759, 'kPa'), gauge(27.5, 'bar'), gauge(27.6, 'bar')]).toEqual([
      0, 1, 0, 1,
    ])
    const outdoor = (value: number, temperature: string) =>
      faultsOf({ units: { ...units, temperature }, surroundings: { outdoor: value } }).length
    expect([outdoor(600, 'F'), outdoor(601, 'F'), outdoor(315, 'C'), outdoor(316, 'C')]).toEqual([0, 1, 0, 1])
    expect(faultsOf({ units, surroundings: { altitude: 29_000 } })).toEqual([
      { field: 'surroundings.altitude', found: '29000', allowed: '-1500 to 20000 ft' },
    ])
  })

  it('accepts an ID, a pressure, a temperature, a battery or a frequency only from a sensor that answered', () => {
    const told = { id: 'A1', sensorPressure: 30, sensorTemperature: 60, battery: 'ok', frequencyMHz: 315 }
    expect(faultsOf({ units, wheels: { LF: { answer: 'answered', ...told } } })).toEqual([])
    const fields = faultsOf({ units, wheels: { LF: { answer: 'silent', ...told } } }).map(
      ({ field }) => field,
    )
    expect(fields).toEqual(Object.keys(told).map((name) => `wheels.LF.${name}`))
  })

  it('takes decimal stored IDs only in digits', () => {
    const module = (notation: string) => ({ units, controlModule: { notation, ids: { LF: '1A2B3C10' } } })
    expect(faultsOf(module('hex'))).toEqual([])
    expect(faultsOf(module('decimal')).map(({ field }) => field)).toEqual(['controlModule.ids.LF'])
  })

  it('takes as not possible only what it has a field or an event for', () => {
    const noted = (field: string) => faultsOf({ units, notPossible: [{ field, why: 'seized' }] }).length
    expect(
      ['controlModule', 'wheels.RR.gauge', 'controlModule.ids.LF', 'events.rotation'].map(noted),
    ).toEqual([0, 0, 0, 0])
    expect(['wheels.RR.gage', 'nothing', 'events.picnic', 'wheels.RR.gauge.psi'].map(noted)).toEqual([
      1, 1, 1, 1,
    ])
  })

  it('keeps what it shows of a fault short and on one line', () => {
    const [fault] = faultsOf({ units, light: { behavior: `a\n${'x'.repeat(5_000)}` } })
    expect(fault?.found.length).toBeLessThan(80)
    expect(fault?.found).not.toContain('\n')
  })
})
