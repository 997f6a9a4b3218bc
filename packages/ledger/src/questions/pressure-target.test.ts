import type { Surroundings } from '@bayledger/reckoning/sheet'
import { describe, expect, it } from 'vitest'
import { inTheBay } from '../../test-support/step-payload.ts'
import { tarn } from '../../test-support/tarn.ts'
import { blankOrder, type OrderState } from '../state.ts'
import { overTargetPsi, pressureTargetFor } from './pressure-target.ts'

const withSheet = (change: Partial<typeof tarn> = {}): OrderState => ({
  ...blankOrder('shop', 'order'),
  sheet: {
    sheet: { ...tarn, ...change },
    written: {
      entryId: 'sheet',
      seq: 1,
      by: { kind: 'system' },
      deviceId: null,
      writtenAt: '2026-01-12T12:00:00.000Z',
      receivedAt: '2026-01-12T12:00:00.000Z',
    },
  },
})

const rightRear = (change: Partial<Surroundings> = {}) =>
  pressureTargetFor(withSheet(), 'RR', { ...inTheBay, ...change })

describe('the pressure to set a wheel to', () => {
  it('is the label’s figure carried to the temperature that was read in the tire', () => {
    expect(rightRear()).toMatchObject({
      ok: true,
      psi: 37.5,
      placardPsi: 35,
      quality: 'measured',
      capped: false,
    })
    expect(rightRear({ tires: 'driven' })).toMatchObject({ psi: 37.5, quality: 'estimated' })
    expect(rightRear({ altitudeFeet: 7_000 })).toMatchObject({ psi: 37.4 })
  })

  it('is the label’s figure for a cold tire', () => {
    expect(rightRear({ tires: 'cold', tire: null })).toMatchObject({
      psi: 35,
      quality: 'assumed',
      unmeasured: false,
    })
  })

  it('needs the temperature of a warm tire that nobody measured', () => {
    const unread = rightRear({ tire: null })
    expect(unread).toMatchObject({ psi: 35, quality: 'assumed', unmeasured: true })
  })

  it('is held to the figure of the tire’s sidewall', () => {
    const soft = { ...tarn.tire.rear, sidewallMaximumPsi: 36 }
    const target = pressureTargetFor(withSheet({ tire: { ...tarn.tire, rear: soft } }), 'RR', inTheBay)
    expect(target).toMatchObject({ psi: 36, capped: true })
  })

  it('is refused where the label figure is more than the sidewall allows', () => {
    const soft = { ...tarn.tire.rear, sidewallMaximumPsi: 32 }
    const target = pressureTargetFor(withSheet({ tire: { ...tarn.tire, rear: soft } }), 'RR', inTheBay)
    expect(target).toMatchObject({
      ok: false,
      refusal: { why: 'label-over-sidewall', sidewallMaximum: { value: 32, unit: 'psi' } },
    })
  })

  it('is refused where no sheet names one', () => {
    const refused = { ok: false, refusal: { why: 'no-figure' } }
    expect(pressureTargetFor(blankOrder('shop', 'order'), 'RR', inTheBay)).toMatchObject(refused)
    const noSpare = withSheet({ placard: { ...tarn.placard, spare: null } })
    expect(pressureTargetFor(noSpare, 'SP', inTheBay)).toMatchObject(refused)
  })

  it('knows no limit of a spare whose tire the sheet does not name', () => {
    expect(pressureTargetFor(withSheet(), 'SP', inTheBay)).toMatchObject({ psi: 63.8, placardPsi: 60 })
  })
})

describe('how far over its target a tire may be left', () => {
  it.each([
    ['cold', 'cold', null, 1.5],
    ['warm by what was measured', 'indoor-warmed', { value: 52, unit: 'F' }, 1.5],
    ['warm by an unknown amount: it is not bled', 'indoor-warmed', null, 3],
    ['driven and not measured: it is not bled', 'driven', null, 3],
  ] as const)('where it is %s', (_words, tires, tire, psi) => {
    expect(overTargetPsi({ ...inTheBay, tires, tire })).toBe(psi)
  })
})
