import { describe, expect, it } from 'vitest'
import type { Finding } from '../diagnosis/diagnosis.ts'
import type { WheelPosition } from '../wheels.ts'
import { finding, nothingOpened, demoPrices as prices, sheetWith } from './demo-prices.test-support.ts'
import type { OfferOf } from './offer.ts'
import { offerBundles } from './offer-bundles.ts'

const sheet = sheetWith('235/60R18', 315, 'clamp-in')
const noSensors = { ...sheet, sensor: null }

const withLook = (findings: Finding[], of: Partial<OfferOf> = {}) =>
  offerBundles({
    diagnosis: { ruleSet: '1', primary: null, findings, contradictions: [], unchecked: [], nextChecks: [] },
    sheet,
    prices,
    look: 'waived',
    opened: nothingOpened,
    ...of,
  })

/** What is offered beside the look. */
const offered = (findings: Finding[], of: Partial<OfferOf> = {}) =>
  withLook(findings, of).filter(({ bundleKey }) => bundleKey !== 'look')

const silent = (...wheels: WheelPosition[]) => finding('sensor-silent', wheels, ['sensor', 'relearn'])
const four = finding('set-of-four-worth-offering', ['LF', 'RF', 'RR', 'LR'], ['set-of-four'])
const leak = (wheel: WheelPosition) => finding('slow-leak', [wheel], ['leak-find'])
const stem = (wheel: WheelPosition) => finding('stem-corroded', [wheel], ['stem'])
const dangerous = (wheel: WheelPosition): Finding => ({
  ...finding('tire-unsafe', [wheel], ['tire']),
  kind: 'stop',
})
const dueSoon = (...wheels: WheelPosition[]): Finding => ({
  ...finding('tread-low-soon', wheels, ['tire']),
  kind: 'note',
})
const low = finding('cold-weather', ['LF'], ['pressure-set'])

const lineKeys = ({ lines }: { lines: readonly { lineKey: string }[] }) => lines.map(({ lineKey }) => lineKey)
const keys = (bundles: readonly { bundleKey: string }[]) => bundles.map(({ bundleKey }) => bundleKey)

describe('what is offered for a silent sensor', () => {
  it('is the sensor with the relearn that it needs, in one bundle', () => {
    const [bundle, ...others] = offered([silent('RR', 'LF'), silent('RR')])
    expect(others).toEqual([])
    expect(bundle).toMatchObject({
      bundleKey: 'sensor.LF-RR',
      title: 'sensor',
      findings: ['sensor-silent'],
      safety: true,
      cautions: [{ number: 'CT-01', version: 2 }],
      alternativeTo: null,
      works: [
        { kind: 'fit-sensor', wheel: 'LF', valve: 'clamp-in', identity: 'new' },
        { kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' },
        { kind: 'relearn' },
        { kind: 'set-pressures' },
      ],
      lines: [
        { lineKey: 'sensor', quantityHundredths: 200 },
        { lineKey: 'wheel-service', quantityHundredths: 200 },
        { lineKey: 'relearn', quantityHundredths: 40 },
        { lineKey: 'sensor-disposal', quantityHundredths: 200 },
        { lineKey: 'pressures', amountCents: 0 },
      ],
    })
  })

  it('is listed beside a set of four as an alternative, where one is worth it', () => {
    const bundles = offered([silent('RR'), four], { look: 'charged' })
    expect(keys(bundles)).toEqual(['sensor.RR', 'sensor.set-of-four'])
    expect(bundles[1]).toMatchObject({
      title: 'set-of-four',
      findings: ['sensor-silent', 'set-of-four-worth-offering'],
      cautions: [{ number: 'CT-05', version: 1 }],
      alternativeTo: 'sensor.RR',
    })
    expect(bundles[1]?.works.map((work) => ('wheel' in work ? work.wheel : work.kind))).toEqual([
      'LF',
      'RF',
      'RR',
      'LR',
      'relearn',
      'set-pressures',
    ])
    expect(bundles[1]?.lines.find(({ lineKey }) => lineKey === 'relearn')?.quantityHundredths).toBe(60)
  })

  it('includes the spare in a set where it is the silent one', () => {
    const wheels = offered([silent('SP'), four])[1]?.works.flatMap((work) =>
      'wheel' in work ? [work.wheel] : [],
    )
    expect(wheels).toEqual(['LF', 'RF', 'RR', 'LR', 'SP'])
  })

  it('is nothing where the sheet has no sensors', () => {
    expect(keys(offered([silent('RR')], { sheet: noSensors }))).toEqual(['relearn'])
    expect(offered([four])).toEqual([])
  })
})

describe('what is offered for a leak', () => {
  it('carries the caution of a leak, and for a tire that was run low that one’s own', () => {
    const cautions = (code: Finding['code']) =>
      offered([finding(code, ['LR'], ['leak-find'])])[0]?.cautions.map(({ number }) => number)
    expect(cautions('slow-leak')).toEqual(['CT-16'])
    expect(cautions('run-low-damage-possible')).toEqual(['CT-14'])
  })

  it('is to find it and look inside, wheel by wheel, without a price for what nobody has seen', () => {
    const bundles = offered([leak('LR'), leak('LF')])
    expect(keys(bundles)).toEqual(['leak.LF', 'leak.LR'])
    expect(bundles[1]).toMatchObject({
      title: 'leak-search',
      findings: ['slow-leak'],
      safety: true,
      cautions: [{ number: 'CT-16', version: 3 }],
      alternativeTo: null,
      works: [
        { kind: 'find-leak', wheel: 'LR' },
        { kind: 'service-stem', wheel: 'LR', valve: 'clamp-in' },
        { kind: 'set-pressures' },
      ],
    })
    expect(bundles.map(lineKeys)).toEqual([
      ['repair-labor', 'repair-after-look', 'kit', 'pressures'],
      ['repair-labor', 'repair-after-look', 'kit', 'pressures'],
    ])
    expect(bundles[0]?.lines.map(({ code }) => code)).not.toContain('repair-unit')
  })

  it.each([
    ['indirect', 'plain'],
    ['none', 'plain'],
    ['unknown', 'plain'],
    ['direct', 'snap-in'],
  ] as const)('brings, where the sheet names no sensor and the system is %s, a %s stem', (system, valve) => {
    expect(offered([leak('LR')], { sheet: { ...noSensors, system } })[0]?.works[1]).toEqual({
      kind: 'service-stem',
      wheel: 'LR',
      valve,
    })
  })
})

describe('what is offered once a tire was opened', () => {
  const searched = [{ wheel: 'LR', findings: ['slow-leak'] }] as const
  const holed = finding('puncture-found', ['LR'], ['leak-find'])
  const search = offered([leak('LR')])[0]

  it('is the repair of its holes, at the price of each, and the search stays to the cent as it was answered', () => {
    const bundles = offered([leak('LR'), holed], {
      opened: { searched, repairable: [{ wheel: 'LR', holes: 2 }] },
    })
    expect(keys(bundles)).toEqual(['leak.LR', 'puncture.LR'])
    expect(bundles[0]).toEqual(search)
    expect(bundles[1]).toMatchObject({
      title: 'puncture',
      findings: ['slow-leak', 'puncture-found'],
      safety: true,
      cautions: [{ number: 'CT-16', version: 3 }],
      works: [{ kind: 'repair-puncture', wheel: 'LR' }],
      lines: [
        { code: 'puncture-labor', quantityHundredths: 200, amountCents: 2_400 },
        { code: 'repair-unit', quantityHundredths: 200, amountCents: 1_200 },
      ],
    })
  })

  it('is the repair alone where the hole was found by other work', () => {
    expect(
      keys(offered([holed], { opened: { searched: [], repairable: [{ wheel: 'LR', holes: 1 }] } })),
    ).toEqual(['puncture.LR'])
  })

  it('is no repair without a price of its own beyond its unit, in a list whose search held it', () => {
    const { punctureLabor: _labor, ...rest } = prices.prices
    const bundles = offered([holed], {
      prices: { ...prices, prices: rest },
      opened: { searched, repairable: [{ wheel: 'LR', holes: 1 }] },
    })
    expect(lineKeys(bundles[1] ?? { lines: [] })).toEqual(['repair-unit'])
  })

  it('is another tire beyond repair, demounted and mounted once, and never a plug', () => {
    const bundles = offered([dangerous('LR')], {
      opened: { searched, repairable: [{ wheel: 'LR', holes: 1 }] },
    })
    expect(keys(bundles)).toEqual(['leak.LR', 'tire.LR'])
    expect(bundles[0]).toEqual(search)
    expect(bundles.map(lineKeys)[1]).toEqual(['tire', 'tire-disposal', 'pressures'])
  })
})

describe('what is offered for a stem', () => {
  it('is to renew it, wheel by wheel', () => {
    const kit = finding('stem-leaking', ['RR'], ['service-kit'])
    const bundles = offered([stem('LF'), kit])
    expect(keys(bundles)).toEqual(['stem.LF', 'stem.RR'])
    expect(bundles[1]).toMatchObject({
      title: 'stem',
      findings: ['stem-leaking'],
      safety: true,
      cautions: [{ number: 'CT-18', version: 1 }],
      alternativeTo: null,
      works: [{ kind: 'service-stem', wheel: 'RR', valve: 'clamp-in' }, { kind: 'set-pressures' }],
    })
    expect(bundles[0]?.cautions).toEqual([{ number: 'CT-17', version: 3 }])
    expect(bundles.map(lineKeys)).toEqual([
      ['wheel-service', 'kit', 'pressures'],
      ['wheel-service', 'kit', 'pressures'],
    ])
    expect(bundles[1]?.lines[0]?.quantityHundredths).toBe(100)
  })

  it('is left out where a sensor or a leak repair renews it anyway', () => {
    expect(keys(offered([stem('LF'), stem('RF'), silent('LF'), leak('RF'), stem('RR')]))).toEqual([
      'sensor.LF',
      'leak.RF',
      'stem.RR',
    ])
  })

  it('is then a reason of that bundle, so that its work cures the stem', () => {
    const leaks = finding('stem-leaking', ['LF'], ['stem', 'service-kit'])
    expect(offered([leaks, leak('LF')])[0]).toMatchObject({
      bundleKey: 'leak.LF',
      findings: ['slow-leak', 'stem-leaking'],
      cautions: [{ number: 'CT-16' }, { number: 'CT-18' }],
    })
    expect(offered([leaks, silent('LF')])[0]).toMatchObject({
      bundleKey: 'sensor.LF',
      findings: ['sensor-silent', 'stem-leaking'],
      cautions: [{ number: 'CT-01' }, { number: 'CT-18' }],
    })
  })

  it('has a caution of the gas where sealant is in a tire whose leak may stay', () => {
    const [bundle] = offered([finding('sealant-inside', ['LF'], ['sensor-clean']), leak('LF')])
    expect(bundle).toMatchObject({
      bundleKey: 'leak.LF',
      cautions: [{ number: 'CT-16' }, { number: 'CT-08' }],
    })
    expect(offered([finding('sealant-inside', ['RR'], ['sensor-clean']), leak('LF')])[0]).toMatchObject({
      cautions: [{ number: 'CT-16' }],
    })
  })

  it('is a plain one where the vehicle listens to no sensor', () => {
    const indirect = { ...noSensors, system: 'indirect' } as const
    expect(offered([stem('LF')], { sheet: indirect })[0]?.works[0]).toMatchObject({ valve: 'plain' })
  })
})

describe('what is offered where nothing is to be fitted', () => {
  const moved = finding('rotated-without-relearn', ['LF'], ['relearn'])

  it('is the relearn, with the pressures', () => {
    expect(offered([moved, low], { look: 'charged' })).toMatchObject([
      {
        bundleKey: 'relearn',
        findings: ['rotated-without-relearn', 'cold-weather'],
        safety: true,
        cautions: [{ number: 'CT-01', version: 2 }],
        alternativeTo: null,
        works: [{ kind: 'relearn' }, { kind: 'set-pressures' }],
        lines: [
          { lineKey: 'relearn', quantityHundredths: 30 },
          { lineKey: 'pressures', amountCents: 0 },
        ],
      },
    ])
  })

  it('is the relearn also where a sensor is only programmed again', () => {
    expect(keys(offered([finding('protocol-wrong', ['LF'], ['reprogram'])]))).toEqual(['relearn'])
  })

  it('is not the relearn once more beside a sensor, which brings it', () => {
    expect(keys(offered([moved, silent('RR'), low]))).toEqual(['sensor.RR'])
  })

  it('is the reset of a system without sensors, with the pressures', () => {
    const reset = finding('reset-only', [], ['reset'])
    expect(offered([reset, low], { sheet: noSensors })).toMatchObject([
      {
        bundleKey: 'reset',
        findings: ['reset-only', 'cold-weather'],
        safety: false,
        cautions: [],
        alternativeTo: null,
        works: [{ kind: 'reset' }, { kind: 'set-pressures' }],
        lines: [
          { lineKey: 'reset', quantityHundredths: 20 },
          { lineKey: 'pressures', amountCents: 0 },
        ],
      },
    ])
  })

  it('is to set the pressures for nothing', () => {
    expect(offered([low, low])).toMatchObject([
      {
        bundleKey: 'pressures',
        findings: ['cold-weather'],
        safety: false,
        cautions: [],
        alternativeTo: null,
        works: [{ kind: 'set-pressures' }],
        lines: [{ lineKey: 'pressures', kind: 'no-charge', amountCents: 0 }],
      },
    ])
  })

  it.each([
    ['a sensor', silent('RR'), ['sensor.RR']],
    ['a leak repair', leak('RR'), ['leak.RR']],
    ['a stem', stem('RR'), ['stem.RR']],
    ['a service kit', finding('stem-leaking', ['RR'], ['service-kit']), ['stem.RR']],
  ] as const)('sets no pressures a second time beside %s', (_, other, expected) => {
    expect(keys(offered([low, other]))).toEqual(expected)
  })

  it('sets the pressures beside a tire that is only due soon, because the customer may say No to it', () => {
    expect(keys(offered([low, dueSoon('LF')]))).toEqual(['tire.LF', 'pressures'])
  })
})

describe('the look', () => {
  it.each([
    ['a sensor', [silent('RR')]],
    ['nothing', []],
  ])('is a bundle of its own beside %s, at its price or at none', (_, findings) => {
    expect(withLook(findings, { look: 'charged' }).at(-1)).toMatchObject({
      bundleKey: 'look',
      findings: [],
      safety: false,
      cautions: [],
      alternativeTo: null,
      works: [{ kind: 'look' }],
      lines: [{ lineKey: 'look', kind: 'look', quantityHundredths: 40, amountCents: 5_200 }],
    })
    expect(withLook(findings).at(-1)?.lines).toMatchObject([{ code: 'look-waived', amountCents: 0 }])
  })
})

describe('what is offered for a tire', () => {
  it('that is dangerous comes first, with its own caution, and nothing else is sold for that tire', () => {
    const bundles = offered([leak('LF'), stem('LF'), dangerous('LF'), silent('LF')])
    expect(keys(bundles)).toEqual(['tire.LF', 'sensor.LF'])
    expect(bundles[0]).toMatchObject({
      title: 'tire',
      findings: ['tire-unsafe'],
      safety: true,
      cautions: [{ number: 'CT-04', version: 1 }],
      works: [
        { kind: 'fit-tire', wheel: 'LF' },
        { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
        { kind: 'set-pressures' },
      ],
    })
    expect(bundles.map(lineKeys)).toEqual([
      ['tire', 'tire-disposal', 'wheel-service', 'kit', 'pressures'],
      ['sensor', 'relearn', 'sensor-disposal', 'pressures'],
    ])
  })

  it('that is due soon is offered without urgency, and not on a wheel that other work opens', () => {
    const bundles = offered([dueSoon('LF', 'RR'), leak('RR')])
    expect(keys(bundles)).toEqual(['leak.RR', 'tire.LF'])
    expect(bundles[1]).toMatchObject({ safety: false, cautions: [{ number: 'CT-03', version: 1 }] })
  })

  it('is none where the shop has no price for a tire', () => {
    const { tire: _tire, ...rest } = prices.prices
    const without = { ...prices, prices: rest }
    expect(keys(offered([dangerous('LF'), dueSoon('RF'), leak('LF')], { prices: without }))).toEqual([
      'leak.LF',
    ])
  })
})
