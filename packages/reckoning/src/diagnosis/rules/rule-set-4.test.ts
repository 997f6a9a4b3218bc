import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence.ts'
import { parseEvidence } from '../../evidence/evidence.ts'
import { caseNamed } from '../cases/worked-cases.test-support.ts'
import { suppose } from '../checks/suppose.ts'
import { diagnose } from '../diagnose.ts'
import type { FindingCode } from '../finding-codes.ts'

const changed = (name: string, values: Record<string, unknown>): Evidence =>
  suppose(caseNamed(name).evidence, values)

const found = (evidence: Evidence, code: FindingCode) =>
  diagnose(evidence).findings.find((finding) => finding.code === code)

describe('a gauge value that no sensor on the vehicle supports', () => {
  const mistyped = changed('K49', { 'wheels.LF.gauge': 2.1 })

  it('is read again before all else, and its stop and holds stay until then', () => {
    const { contradictions, nextChecks, findings } = diagnose(mistyped)
    expect(contradictions).toContainEqual({
      code: 'gauge-unsupported',
      values: { wheel: 'LF', value: 2.1, sensor: 35, unit: 'psi' },
    })
    expect(nextChecks[0]?.field).toBe('wheels.LF.gauge')
    expect(findings[0]).toMatchObject({ code: 'run-low-damage-possible', stop: 'do-not-drive' })
    expect(findings[0]?.holds).toEqual(['inflation', 'road'])
  })

  it('makes no sensor wrong, and is gone with the second reading', () => {
    expect(found(mistyped, 'sensor-reads-wrong')).toBeUndefined()
    const again = suppose(mistyped, { 'wheels.LF.gauge': 32.1 })
    expect(diagnose(again).contradictions).toEqual([])
    expect(diagnose(again).findings.some(({ stop }) => stop !== undefined)).toBe(false)
  })

  it('is believed where its own sensor says the same, or was silent, or does not follow', () => {
    for (const values of [
      { 'wheels.LF.sensorPressure': 2.1 },
      { 'wheels.LF.answer': 'silent', 'wheels.LF.id': null, 'wheels.LF.sensorPressure': null },
      { 'wheels.LF.followsPressure': false },
    ])
      expect(diagnose(suppose(mistyped, values)).contradictions.map(({ code }) => code)).not.toContain(
        'gauge-unsupported',
      )
  })
})

describe('a hot corner', () => {
  const hot = (values: Record<string, unknown>) => changed('T03', values)

  it('is likely after driving, possible where the tires are said to be cold, which is then voiced', () => {
    expect(found(hot({ 'surroundings.tires': 'driven' }), 'hot-corner')?.confidence).toBe('likely')
    const cold = diagnose(hot({ 'surroundings.tires': 'cold' }))
    expect(cold.findings[0]).toMatchObject({ code: 'hot-corner', confidence: 'possible' })
    expect(cold.contradictions).toContainEqual({
      code: 'hot-corner-tires-cold',
      values: { wheel: 'LF', degrees: 88, temperatureUnit: 'F' },
    })
  })

  it('is not sold as a leak, and is low only where the gauge itself says so', () => {
    expect(found(hot({}), 'tire-low')).toBeUndefined()
    expect(found(hot({ 'wheels.LF.gauge': 26, 'wheels.LF.sensorPressure': 26 }), 'tire-low')?.wheels).toEqual(
      ['LF'],
    )
  })
})

describe('a stowed spare', () => {
  it('with a bulge is not fitted, and keeps nothing off the road', () => {
    const evidence = changed('K49', { 'wheels.SP.tireDamage': ['bulge'] })
    expect(found(evidence, 'tire-unsafe')).toMatchObject({
      wheels: ['SP'],
      stop: 'repair-before-release',
      holds: [],
      figures: { wheel: 'SP', form: 'stowed', damage: 'bulge' },
    })
  })

  it('of full size has the class of the rear tires where nobody noted its own', () => {
    // 49 CFR 571.138 Table 1 (from memory): 46 psi for load range E, over 75 % of 55.
    const spare = changed('T06', {
      'vehicle.spare': 'full-size',
      'vehicle.spareMonitored': true,
      'vehicle.placard.spare': 55,
      'vehicle.loadClass.spare': null,
      'wheels.SP.gauge': 45,
    })
    expect(found(spare, 'spare-low')?.wheels).toEqual(['SP'])
  })
})

describe('a tire seen from inside', () => {
  it.each(['run-low-damage', 'cord', 'separation'])(
    'with %s must not be driven on, and gets a new tire',
    (inside) => {
      expect(found(changed('K49', { 'wheels.RR.insideTire': inside }), 'tire-unsafe')).toMatchObject({
        wheels: ['RR'],
        stop: 'do-not-drive',
        offers: ['tire'],
        holds: ['road', 'hand-back'],
      })
    },
  )

  it('and found sound is no finding', () => {
    expect(found(changed('K49', { 'wheels.RR.insideTire': 'sound' }), 'tire-unsafe')).toBeUndefined()
  })
})

describe('plies of a light-truck tire', () => {
  const at = (gauge: number, casing: string | null) =>
    found(
      changed('T06', {
        'surroundings.outdoor': 66,
        ...Object.fromEntries(['LF', 'RF', 'RR', 'LR'].map((w) => [`wheels.${w}.sensorTemperature`, 66])),
        'wheels.RF.gauge': 55,
        'wheels.RR.gauge': 75,
        'wheels.LR.gauge': 75,
        'wheels.LF.gauge': gauge,
        'vehicle.casing.front': casing,
      }),
      'run-low-damage-possible',
    )

  it('count as steel where nobody read them, and not where the sidewall says polyester', () => {
    expect(at(44, null)?.wheels).toEqual(['LF'])
    expect(at(44, 'steel')?.wheels).toEqual(['LF'])
    expect(at(44, 'polyester')).toBeUndefined()
    expect(at(44.1, null)).toBeUndefined()
    expect(at(27.5, 'polyester')?.wheels).toEqual(['LF'])
  })
})

describe('loss since an earlier reading', () => {
  const at = (values: object) =>
    found(
      changed('K49', {
        'wheels.LF.gauge': 32,
        'history.earlierReadings': [{ wheel: 'LF', pressure: 35, temperature: 60, daysAgo: 9, ...values }],
      }),
      'slow-leak',
    )

  it('is judged half a day later at the earliest', () => {
    expect(at({ daysAgo: 0.4 })).toBeUndefined()
    expect(at({ daysAgo: 0.5 })?.wheels).toEqual(['LF'])
  })

  it('leaves out what the altitude of that reading explains', () => {
    // 3.0 psi of air pressure between 6,000 ft and the sea (standard atmosphere).
    expect(at({ altitude: 6_000 })).toBeUndefined()
    expect(at({ altitude: 0 })?.wheels).toEqual(['LF'])
  })

  it('of all four tires alike is the weather or the gauge', () => {
    const all = ['LF', 'RF', 'RR', 'LR'] as const
    const evidence = changed('K49', {
      ...Object.fromEntries(all.map((wheel) => [`wheels.${wheel}.gauge`, 32])),
      'history.earlierReadings': all.map((wheel) => ({ wheel, pressure: 35, temperature: 60, daysAgo: 9 })),
    })
    expect(found(evidence, 'slow-leak')).toBeUndefined()
  })
})

describe('evidence', () => {
  const faults = (values: Record<string, unknown>) => {
    const parsed = parseEvidence(changed('K49', values))
    return parsed.ok ? [] : parsed.faults.map(({ field, allowed }) => `${field}: ${allowed}`)
  }

  it.each(['00000000', 'FFFFFFFF', 'ffffffff', '0'])(
    'takes no ID %s, which a reader shows when it read none',
    (id) => {
      expect(faults({ 'wheels.LF.id': id })).toEqual([
        'wheels.LF.id: the ID of a sensor; all zeros or all ones is what a reader shows when it read none',
      ])
    },
  )

  it('takes holes of 50 mm at most, and only in a tire that was said to be punctured', () => {
    const hole = { place: 'crown', millimeters: 60, overlapsRepair: false }
    expect(faults({ 'wheels.LF.tireDamage': ['puncture'], 'wheels.LF.punctures': [hole] })).toEqual([
      'wheels.LF.punctures.0.millimeters: at most 50',
    ])
    expect(faults({ 'wheels.LF.punctures': [{ ...hole, millimeters: 3 }] })).toEqual([
      'wheels.LF.punctures: only on a wheel whose tireDamage names a puncture',
    ])
  })
})

describe('what to check next', () => {
  it('asks once whether the temporary spare is on the vehicle, and leads with a wheel of which something was found', () => {
    const { nextChecks } = diagnose(
      changed('K02', {
        ...Object.fromEntries(
          ['LF', 'RF', 'RR', 'LR'].flatMap((wheel) => [
            [`wheels.${wheel}.stem`, null],
            [`wheels.${wheel}.mounted`, null],
          ]),
        ),
      }),
    )
    expect(nextChecks.filter(({ field }) => field.endsWith('.mounted')).length).toBeLessThanOrEqual(1)
    const stems = nextChecks.filter(({ field }) => field.endsWith('.stem')).map(({ field }) => field)
    expect(stems[0]).toBe('wheels.RR.stem')
  })
})

describe('the kind of system', () => {
  it('none leaves a low tire low, and says nothing of a light that does its job', () => {
    const evidence = changed('K01', { 'vehicle.system': 'none' })
    expect(found(evidence, 'tire-low')?.figures).toMatchObject({ wheel: 'LF', form: 'without-light' })
  })

  it('indirect, where sensors answer, is settled before anything else is said to be right', () => {
    const { findings, primary } = diagnose(
      changed('K49', { 'vehicle.system': 'indirect', 'light.behavior': 'solid' }),
    )
    expect(findings.map(({ code }) => code)).toContain('system-kind-contradicted')
    expect(primary).toBeNull()
    expect(findings.map(({ code }) => code)).not.toContain('warning-unexplained')
  })
})
