import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { caseNamed, workedCases } from '../cases/worked-cases.test-support.ts'
import type { Supposition } from '../checks/field-check.ts'
import { suppose } from '../checks/suppose.ts'
import { FindingCode } from '../diagnosis.ts'
import { judge } from '../engine/judge.ts'

const evidenceOf = (name: string): Evidence => caseNamed(name).evidence

const findings = (evidence: Evidence): string[] =>
  judge(evidence).judged.map(({ rule, match }) =>
    match.wheels.length > 0 ? `${rule.code}@${match.wheels.join('+')}` : rule.code,
  )

/** A sound vehicle without light, 35 psi at 60 °F all round, changed in some facts. */
const soundBut = (...suppositions: Supposition[]): Evidence =>
  suppositions.reduce<Evidence>(
    (evidence, one) => suppose(evidence, one),
    suppose(evidenceOf('K24'), { 'light.behavior': 'off' }),
  )

const lit = { 'light.behavior': 'solid' }
const flashing = { 'light.behavior': 'flash-then-solid' }

const wheel = (position: string, values: Record<string, unknown>): Supposition =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [`wheels.${position}.${name}`, value]))

const allFour = (values: Record<string, unknown>): Supposition =>
  Object.assign({}, ...['LF', 'RF', 'RR', 'LR'].map((position) => wheel(position, values)))

const told = { id: null, sensorPressure: null, sensorTemperature: null, battery: null, frequencyMHz: null }

describe('rules that the worked cases do not reach', () => {
  const rows: readonly [string, Evidence, readonly string[]][] = [
    ['a sound vehicle', soundBut(), ['nothing-found-today']],
    ['a gauge value that nobody took', soundBut(wheel('LF', { gauge: null })), ['gauge-missing@LF']],
    ['a light that we have not seen', soundBut({ 'light.lampCheck': null }), ['light-not-witnessed']],
    [
      'one ID read once at two wheels',
      soundBut(flashing, wheel('LR', { id: '1A2B3C12' })),
      ['cross-read-suspected@RR+LR'],
    ],
    ['a system that nobody knows', soundBut({ 'vehicle.system': 'unknown' }), ['system-unknown']],
    ['a gauge of 350 psi', soundBut(lit, wheel('RF', { gauge: 350 })), ['reading-impossible@RF']],
    [
      'a gauge under zero, which may be a flat tire',
      soundBut(lit, wheel('RF', { gauge: -1 })),
      ['run-low-damage-possible@RF', 'reading-impossible@RF'],
    ],
    ['an outdoor temperature of 400 °F', soundBut({ 'surroundings.outdoor': 400 }), ['reading-impossible']],
    [
      'air added to one wheel since',
      soundBut(lit, wheel('RF', { gauge: 22 }), { 'events.air-added': { wheel: 'RF' } }),
      ['reading-stale@RF'],
    ],
    ['wheels moved since', soundBut({ 'events.moved-since-reading': {} }), ['reading-stale@LF+RF+RR+LR']],
    [
      'one corner 30 °F hotter than the others after driving',
      soundBut({ 'surroundings.tires': 'driven' }, wheel('LR', { sensorTemperature: 90, gauge: 38 })),
      ['hot-corner@LR', 'sensor-reads-wrong@LR'],
    ],
    [
      'one corner just under 30 °F hotter',
      soundBut(
        { 'surroundings.tires': 'driven' },
        wheel('LR', { sensorTemperature: 89.9, gauge: 37.8, sensorPressure: 37.8 }),
      ),
      ['nothing-found-today'],
    ],
    ['a bulge', soundBut(wheel('SP', { tireDamage: ['bulge'] })), ['tire-unsafe@SP']],
    ['2/32 in of tread', soundBut(wheel('RR', { treadDepth32nds: 2 })), ['tire-unsafe@RR']],
    [
      '4/32 in of tread',
      soundBut(wheel('RR', { treadDepth32nds: 4 })),
      ['tread-low-soon@RR', 'nothing-found-today'],
    ],
    ['a missing stud', soundBut(wheel('RR', { fastenerDamage: ['stud-missing'] })), ['wheel-not-secure@RR']],
    [
      'all four low by cold alone',
      soundBut(lit, allFour({ gauge: 28.6, sensorPressure: 28.6, sensorTemperature: 0 }), {
        'surroundings.outdoor': 0,
        'surroundings.lastSet.temperature': 68,
      }),
      ['cold-weather@LF+RF+RR+LR'],
    ],
    [
      'all four low after a descent from 7,000 ft',
      soundBut(
        { 'vehicle.placard.front': 33, 'vehicle.placard.rear': 33, 'surroundings.altitude': 500 },
        { 'surroundings.lastSet.altitude': 7_000, 'surroundings.lastSet.temperature': 60 },
        allFour({ gauge: 29.9, sensorPressure: 29.9 }),
      ),
      ['altitude-change@LF+RF+RR+LR'],
    ],
    [
      'the same altitude at setting and now',
      soundBut(
        { 'surroundings.altitude': 7_000, 'surroundings.lastSet.altitude': 7_000 },
        allFour({ gauge: 32, sensorPressure: 32 }),
      ),
      ['weather-and-seepage@LF+RF+RR+LR'],
    ],
    [
      'tires set to the sidewall figure',
      soundBut(allFour({ gauge: 51, sensorPressure: 51 })),
      ['over-inflated@LF+RF+RR+LR'],
    ],
    [
      'a low tire without a light',
      soundBut(wheel('LF', { gauge: 24, sensorPressure: 24 })),
      ['tire-low@LF', 'no-warning-given@LF'],
    ],
    [
      'a low tire without a light, while a wheel is still to be tried',
      soundBut(
        wheel('LF', { gauge: 24, sensorPressure: 24 }),
        wheel('RR', { answer: 'silent', tries: 1, ...told }),
      ),
      ['tire-low@LF', 'retry-silent-wheel@RR'],
    ],
    ['right pressures, no sensors, no event', { ...evidenceOf('K21'), events: [] }, ['reset-and-recheck']],
    ['a flash on a vehicle without sensors', suppose(evidenceOf('K21'), flashing), ['wheel-speed-fault']],
    [
      'a vehicle that monitors nothing',
      suppose(evidenceOf('K21'), { 'vehicle.system': 'none' }),
      ['no-monitoring-fitted'],
    ],
    [
      'all four low without sensors and without a light',
      suppose(evidenceOf('K21'), { 'light.behavior': 'off', ...allFour({ gauge: 26 }) }),
      ['equal-loss-unseen', 'weather-and-seepage@LF+RF+RR+LR'],
    ],
    [
      'a wheel that answers where no sensor should be',
      suppose(evidenceOf('K21'), { 'light.behavior': 'off', ...wheel('LF', { answer: 'answered' }) }),
      ['system-kind-contradicted@LF'],
    ],
    [
      'four silent wheels',
      soundBut(flashing, allFour({ answer: 'silent', tries: 2, ...told })),
      ['no-wheel-answers@LF+RF+RR+LR'],
    ],
    [
      'all sensors low by what 5,280 ft explain',
      soundBut({ 'surroundings.altitude': 5_280 }, allFour({ sensorPressure: 32.4 })),
      ['sensors-refer-to-sea-level', 'nothing-found-today'],
    ],
    [
      'a sensor at -40 °F',
      soundBut(wheel('RR', { sensorTemperature: -40 })),
      ['sensor-temperature-impossible@RR'],
    ],
    [
      'a sensor refused at two relearns',
      soundBut(flashing, wheel('RR', { learnRefusals: 2, id: 'ABCDEF' })),
      ['protocol-wrong@RR', 'id-not-stored@RR', 'stored-id-unheard@RR'],
    ],
    [
      'a sensor fitted today that reports nothing',
      soundBut(flashing, wheel('RR', { sensorPressure: 0 }), {
        'events.sensor-fitted-today': { wheel: 'RR' },
      }),
      ['sensor-asleep@RR'],
    ],
    ['a corroded stem', soundBut(wheel('RR', { stem: 'corroded' })), ['stem-corroded@RR']],
    [
      'the spare rotated onto the road',
      suppose(evidenceOf('K27'), {
        ...flashing,
        ...wheel('SP', { gauge: 35, sensorPressure: 35 }),
        'controlModule.ids.SP': '1A2B3C13',
        'controlModule.ids.LR': '1A2B3C14',
      }),
      ['spare-rotated-without-relearn@LR+SP'],
    ],
    [
      'a control module without IDs',
      soundBut(flashing, { controlModule: { state: 'blank', codes: [] } }),
      ['control-module-blank'],
    ],
    ['aftermarket wheels', soundBut({ 'events.aftermarket-wheels': {} }), ['aftermarket-wheels']],
    ['chains', soundBut({ 'events.chains': {} }), ['snow-or-chains']],
    [
      'a part of ours in warranty on a wheel that is silent',
      suppose(evidenceOf('K02'), { 'history.partsUnderWarranty': ['RR'], 'history.ourWorkOn': ['RR', 'LF'] }),
      ['sensor-silent@RR', 'comeback@RR', 'under-warranty@RR'],
    ],
    [
      'four old sensors that all work',
      soundBut(allFour({ sensorAgeMonths: 96 })),
      ['sensors-near-usual-life@LF+RF+RR+LR', 'nothing-found-today'],
    ],
  ]

  for (const [title, evidence, expected] of rows) {
    it(title, () => {
      expect(findings(evidence).sort()).toEqual([...expected].sort())
    })
  }

  it('reach, together with the worked cases, every finding there is', () => {
    const reached = new Set([
      ...workedCases.flatMap(({ expected }) => expected.findings.map(({ code }) => code)),
      ...rows.flatMap(([, evidence]) => judge(evidence).judged.map(({ rule }) => rule.code)),
    ])
    expect(FindingCode.options.filter((code) => !reached.has(code))).toEqual([])
  })
})

describe('warning points', () => {
  // 49 CFR 571.138 S4.2(a) and its Table 1, the floors from memory: at or under 75 % of the label, or the floor.
  const rows = [
    [32, 'SL', 24, 24.1],
    [26, 'SL', 20, 20.1],
    [30, 'XL', 23, 23.1],
    [35, 'LT-C', 29, 29.1],
    [45, 'LT-D', 38, 38.1],
    [80, 'LT-E', 60, 60.1],
  ] as const
  for (const [label, loadClass, low, notLow] of rows) {
    it(`a ${loadClass} tire with a label of ${label} psi is low at ${low} and not at ${notLow}`, () => {
      const isLow = (gauge: number) =>
        findings(
          soundBut(
            { 'vehicle.placard.front': label, 'vehicle.placard.rear': label },
            { 'vehicle.loadClass.front': loadClass, 'vehicle.loadClass.rear': loadClass },
            allFour({ gauge: label, sensorPressure: label }),
            wheel('LF', { gauge, sensorPressure: gauge }),
          ),
        ).includes('tire-low@LF')
      expect([isLow(low), isLow(notLow)]).toEqual([true, false])
    })
  }
})
