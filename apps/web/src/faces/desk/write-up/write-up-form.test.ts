import { describe, expect, it } from 'vitest'
import {
  blankWriteUp,
  isWorthKeeping,
  keyFor,
  missingInWriteUp,
  newWriteUpKeys,
  type WriteUp,
  withVehicle,
} from './write-up-form.ts'

const whole: WriteUp = {
  ...blankWriteUp,
  person: { known: null, name: 'A. Driver', phone: '', email: '', may: [], also: [], language: 'en' },
  which: { ...blankWriteUp.which, description: 'A sedan', sheetId: 'sheet' },
  words: 'The light is on.',
  light: 'solid',
  waitsHere: 'here',
  consent: ['look'],
  consentBy: 'owner',
  lookFee: 'charged',
}

describe('a write-up', () => {
  it('opens once everything that is needed is there', () => {
    expect(missingInWriteUp(whole, null)).toBeUndefined()
    expect(missingInWriteUp({ ...whole, odometer: 41_230 }, null)).toBeUndefined()
  })

  it('does not open while a typed odometer is no figure: it would be dropped unseen', () => {
    expect(missingInWriteUp({ ...whole, odometer: 'unreadable' }, null)).toMatch(/odometer is no figure/)
    expect(missingInWriteUp({ ...whole, odometer: -5 }, null)).toMatch(/odometer is no figure/)
  })

  it('does not open with an odometer of nines, and with an unlikely one only when it was read twice', () => {
    expect(missingInWriteUp({ ...whole, odometer: 999_999 }, null)).toMatch(/display shows at its end/)
    expect(missingInWriteUp({ ...whole, odometer: 640_000 }, null)).toMatch(/confirm it/)
    expect(missingInWriteUp({ ...whole, odometer: 640_000, odometerTwice: true }, null)).toBeUndefined()
  })

  it('does not open with less than the vehicle read at an earlier visit, until it was read twice', () => {
    const before = { distance: { value: 52_625, unit: 'mi' as const }, daysAgo: 31 }
    const lower = { ...whole, odometer: 52_265 }
    expect(missingInWriteUp(lower, before)).toMatch(/52,625 mi at a visit 31 days ago/)
    expect(missingInWriteUp({ ...lower, odometerTwice: true }, before)).toBeUndefined()
    expect(missingInWriteUp({ ...whole, odometer: 53_000 }, before)).toBeUndefined()
  })

  it('takes nothing that was said of one vehicle on to another: the order it came back after, and its odometer', () => {
    const known = { vehicleId: 'first' } as NonNullable<WriteUp['which']['known']>
    const comeback: WriteUp = {
      ...{ ...whole, which: { ...whole.which, known }, lookFee: 'waived', odometerTwice: true },
      comebackOf: { orderId: 'order', number: 'T-2605' },
    }
    const other = { ...comeback.which, known: { ...known, vehicleId: 'second' } }
    expect({ ...comeback, ...withVehicle(comeback, other) }).toMatchObject({
      ...{ which: other, comebackOf: null, lookFee: null, odometerTwice: false },
    })
    const sheet = { ...comeback.which, sheetId: 'other' }
    expect({ ...comeback, ...withVehicle(comeback, sheet) }).toEqual({ ...comeback, which: sheet })
  })

  it('does not open on the consent of a person without a name who is not the owner', () => {
    const named = { ...whole, consentBy: 'named-person' as const }
    expect(missingInWriteUp(named, null)).toBe('Write the name of the person who gave the consent.')
    expect(missingInWriteUp({ ...named, consentName: 'B. Driver' }, null)).toBeUndefined()
  })

  it('does not open with an e-mail address that cannot be one, or a promise that has passed', () => {
    const withEmail = (email: string) =>
      missingInWriteUp({ ...whole, person: { ...whole.person, email } }, null)
    expect(withEmail('a.driver@')).toMatch(/e-mail/)
    expect(withEmail('a.driver@example.org')).toBeUndefined()
    expect(missingInWriteUp(whole, null, true)).toMatch(/has passed/)
    const halfTyped = { ...whole, promised: '09:30', promisedOn: '' }
    expect(missingInWriteUp(halfTyped, null)).toBe('Enter the day of the promise.')
  })

  it('does not open with a VIN that cannot be one', () => {
    const withVin = (vin: string) => missingInWriteUp({ ...whole, which: { ...whole.which, vin } }, null)
    expect(withVin('1VA')).toMatch(/VIN/)
    expect(withVin('1IANTR2N3KT004127')).toMatch(/VIN/)
    expect(withVin('1M8GDM9AXKP042788')).toBeUndefined()
  })

  it.each(['(555) 555-0142', '+1 555 555 0142', '', '  '])('takes the telephone number "%s"', (phone) => {
    expect(missingInWriteUp({ ...whole, person: { ...whole.person, phone } }, null)).toBeUndefined()
  })

  it.each(['abc', '555', '555-0142 at work'])('does not take "%s" for a telephone number', (phone) => {
    expect(missingInWriteUp({ ...whole, person: { ...whole.person, phone } }, null)).toMatch(/telephone/)
  })
})

describe('what is sent for a write-up', () => {
  it('has one key as long as it stays the same, and another once it was corrected', () => {
    const keys = newWriteUpKeys('order')
    const first = keyFor(keys, { name: 'A. Drvier' })
    expect(keyFor(keys, { name: 'A. Drvier' })).toBe(first)
    const mended = keyFor(keys, { name: 'A. Driver' })
    expect(mended).not.toBe(first)
    expect(keyFor(keys, { name: 'A. Driver' })).toBe(mended)
  })
})

describe('what is kept of a write-up', () => {
  it('is anything that was typed or answered, and nothing of one that only names who is on file', () => {
    expect(isWorthKeeping(blankWriteUp)).toBe(false)
    expect(isWorthKeeping({ ...blankWriteUp, person: { ...blankWriteUp.person, name: 'A' } })).toBe(true)
    expect(isWorthKeeping({ ...blankWriteUp, which: { ...blankWriteUp.which, plate: 'BRF' } })).toBe(true)
    expect(isWorthKeeping({ ...blankWriteUp, words: 'The light is on.' })).toBe(true)
    expect(isWorthKeeping({ ...blankWriteUp, light: 'off' })).toBe(true)
  })
})
