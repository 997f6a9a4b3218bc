import { describe, expect, it } from 'vitest'
import type { LightBehavior } from '../../evidence/evidence-schema.ts'
import { readingOrder } from '../../wheels.ts'
import { caseNamed } from '../cases/worked-cases.test-support.ts'
import { suppose } from '../checks/suppose.ts'
import { readFacts } from '../facts/facts.ts'
import { FindingCode } from '../finding-codes.ts'
import { explanationOf } from './explanation.ts'

/** The trade's own order, by light (common practice, no source): what is looked for first, then what is rarer. */
const tradeOrder: Readonly<Record<LightBehavior, string>> = {
  off: 'telltale-dark',
  solid:
    'tire-low altitude-change cold-weather weather-and-seepage spare-low set-then-reset reset-only reset-and-recheck sensor-reads-wrong sensor-does-not-follow temporary-spare-fitted not-driven-yet',
  'flash-then-solid':
    'sensor-silent no-wheel-answers frequency-wrong sensor-asleep protocol-wrong no-sensor-on-arrival temporary-spare-fitted sensor-does-not-follow sensor-battery-low other-wheel-set id-duplicated wheel-from-another-vehicle id-not-stored spare-rotated-without-relearn control-module-blank receiver-fault code-old-or-intermittent stored-id-unheard not-driven-yet wheel-speed-fault',
  'intermittent-cold':
    'cold-morning-margin cold-weather weather-and-seepage sensor-battery-low sensor-silent code-old-or-intermittent',
  'intermittent-other':
    'one-place-only interference-suspected snow-or-chains sensor-battery-low code-old-or-intermittent',
  'flash-continuous': 'learn-mode-open',
}

const lights = Object.entries(tradeOrder).map(([light, codes]) => [
  light as LightBehavior,
  codes.split(' ').map((code) => FindingCode.parse(code)),
]) as [LightBehavior, FindingCode[]][]

/** Every tire so low, and every sensor too, that whatever is about pressure is able to light the lamp. */
const lowAllRound = (behavior: LightBehavior) =>
  readFacts(
    suppose(caseNamed('K01').evidence, {
      'light.behavior': behavior,
      ...Object.fromEntries(
        ['LF', 'RF', 'RR', 'LR'].flatMap((wheel) => [
          [`wheels.${wheel}.gauge`, 15],
          [`wheels.${wheel}.sensorPressure`, 15],
        ]),
      ),
    }),
  )

const explained = (behavior: LightBehavior, standing: readonly FindingCode[]) =>
  explanationOf(lowAllRound(behavior), {
    has: (code) => standing.includes(code),
    wheelsOf: () => readingOrder,
  })

describe.each(lights)('a light that is %s', (light, codes) => {
  it.each(codes)('is explained by %s', (code) => {
    expect(explained(light, [code])).toBe(code)
  })

  it('is explained by the earlier of two in the order of the trade', () => {
    codes.forEach((code, at) => {
      expect(explained(light, codes.slice(at).reverse())).toBe(code)
    })
  })

  it('is explained by nothing else', () => {
    const others = FindingCode.options.filter((code) => !codes.includes(code))
    const lastResort = ['malfunction-unexplained', 'warning-unexplained']
    expect(
      explained(
        light,
        others.filter((code) => !lastResort.includes(code)),
      ),
    ).toBeNull()
  })

  it('is called unexplained only where nothing explains it', () => {
    expect(explained(light, ['warning-unexplained'])).toBe('warning-unexplained')
    expect(explained(light, ['warning-unexplained', 'malfunction-unexplained'])).toBe(
      'malfunction-unexplained',
    )
    expect(explained(light, ['malfunction-unexplained', ...codes])).toBe(codes[0])
  })
})
