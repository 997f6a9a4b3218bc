import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { caseNamed } from '../cases/worked-cases.test-support.ts'
import type { Supposition } from '../checks/field-check.ts'
import { suppose } from '../checks/suppose.ts'
import { judge } from '../engine/judge.ts'

/** A sound vehicle without light, 35 psi at 60 °F all round; its right front brake drags after a drive. */
const dragging = suppose(caseNamed('K24').evidence, {
  'light.behavior': 'off',
  'surroundings.tires': 'driven',
  ...Object.fromEntries(['LF', 'RR', 'LR'].map((wheel) => [`wheels.${wheel}.sensorTemperature`, 95])),
  ...Object.fromEntries(['LF', 'RR', 'LR'].map((wheel) => [`wheels.${wheel}.gauge`, 38.4])),
  ...Object.fromEntries(['LF', 'RR', 'LR'].map((wheel) => [`wheels.${wheel}.sensorPressure`, 38.4])),
  'wheels.RF.sensorTemperature': 190,
  'wheels.RF.gauge': 41,
  'wheels.RF.sensorPressure': 41,
})

const codes = (...suppositions: Supposition[]): string[] =>
  judge(suppositions.reduce<Evidence>((evidence, one) => suppose(evidence, one), dragging)).judged.map(
    ({ rule, match }) => `${rule.code}@${match.wheels.join('+')}`,
  )

const truck: Supposition = {
  'vehicle.placard.front': 65,
  'vehicle.placard.rear': 65,
  'vehicle.loadClass.front': 'LT-E',
  'vehicle.loadClass.rear': 'LT-E',
  'vehicle.sidewallMaximum.front': 80,
  'vehicle.sidewallMaximum.rear': 80,
  ...Object.fromEntries(
    ['LF', 'RR', 'LR'].flatMap((wheel) => [
      [`wheels.${wheel}.gauge`, 70.4],
      [`wheels.${wheel}.sensorPressure`, 70.4],
    ]),
  ),
}

/** The sensor measures the rim, which a dragging brake heats more than the air (the trade's own rule). */
describe('the sensor of a hot corner', () => {
  it('says nothing of the air in a tire whose own sensor is silent', () => {
    const silent: Supposition = {
      'wheels.LR.answer': 'silent',
      'wheels.LR.tries': 3,
      'wheels.LR.sensorPressure': null,
      'wheels.LR.sensorTemperature': null,
      'wheels.LR.id': null,
      'wheels.LR.battery': null,
      'wheels.LR.frequencyMHz': null,
    }
    expect(codes(silent)).toEqual(expect.arrayContaining(['hot-corner@RF', 'sensor-silent@LR']))
    expect(codes(silent).filter((code) => code !== 'hot-corner@RF' && code.includes('-l'))).toEqual([])
    expect(codes(silent).some((code) => /^(slow-loss-suspected|under-placard|warm-tire)/.test(code))).toBe(
      false,
    )
  })

  it("does not make a truck's sound tire look as if it was run low; a tire that is low as read still is a stop", () => {
    const hot = (psi: number): Supposition => ({ 'wheels.RF.gauge': psi, 'wheels.RF.sensorPressure': psi })
    expect(codes(truck, hot(72))).toContain('hot-corner@RF')
    expect(codes(truck, hot(72))).not.toContain('run-low-damage-possible@RF')
    expect(codes(truck, hot(54))).toContain('run-low-damage-possible@RF')
  })

  it('is no measure for the other tire of the axle', () => {
    const cold: Supposition = { 'wheels.LF.gauge': 34.9, 'wheels.LF.sensorPressure': 34.9 }
    const others: Supposition = Object.fromEntries(
      ['RR', 'LR'].flatMap((wheel) => [
        [`wheels.${wheel}.gauge`, 36],
        [`wheels.${wheel}.sensorPressure`, 36],
      ]),
    )
    expect(codes(cold, others)).not.toContain('slow-loss-suspected@LF')
    expect(codes(cold, others, { 'wheels.RF.sensorTemperature': 95 })).toContain('slow-loss-suspected@LF')
  })
})

describe('a tire over the maximum on its sidewall, where the label calls for that maximum itself', () => {
  const atMaximum = (psi: number): Supposition => ({
    ...truck,
    'surroundings.tires': 'cold',
    ...Object.fromEntries(
      ['LF', 'RF', 'RR', 'LR'].flatMap((wheel) => [
        [`wheels.${wheel}.gauge`, wheel === 'LF' ? psi : 80],
        [`wheels.${wheel}.sensorPressure`, wheel === 'LF' ? psi : 80],
        [`wheels.${wheel}.sensorTemperature`, 60],
      ]),
    ),
    'vehicle.placard.front': 80,
    'vehicle.placard.rear': 80,
  })

  it('is too hard from 3 % over it on; less is what a gauge and a thermometer may be wrong by', () => {
    expect(codes(atMaximum(82.3))).not.toContain('over-inflated@LF')
    expect(codes(atMaximum(82.5))).toContain('over-inflated@LF')
  })
})
