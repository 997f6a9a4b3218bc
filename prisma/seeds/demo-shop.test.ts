import { canonicalText } from '@bayledger/ledger/digests'
import { latestDayAt, readMade } from '@bayledger/ledger/subjects/arrival/sidewall'
import { readPriceBook } from '@bayledger/reckoning/money/price-book'
import { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { tireAge } from '@bayledger/reckoning/tire/tire-age'
import { describe, expect, it } from 'vitest'
import { discountLimits, settings } from './demo/settings.ts'
import { demoShop } from './demo-shop.ts'

const demoNow = '2026-01-12T11:40:00-05:00'
const shop = demoShop(demoNow)

describe('the demo’s prices', () => {
  it('are read as the desk reads them, and limit discounts as its writers think', () => {
    const body = settings.find(({ kind }) => kind === 'prices')?.body
    expect(readPriceBook(body)?.discountLimits).toEqual(discountLimits)
  })
})

describe('the demo shop', () => {
  it('has sheets that are whole, each figure verified by another person than entered it, but for one torque', () => {
    for (const sheet of shop.sheets) {
      expect(SpecificationSheet.safeParse(sheet).error).toBeUndefined()
      for (const [figure, source] of Object.entries(sheet.sources)) {
        if (source === null) continue
        expect(source.verifiedBy).not.toBe(source.enteredBy)
        expect(source.verifiedBy === null).toBe(
          sheet.name === 'Dorrin Pannier van 2020' && figure === 'studTorque',
        )
      }
    }
  })

  it('has VINs of no maker, with the check digit that 49 CFR 565.15(c) requires', () => {
    expect(checkDigit('11111111111111111')).toBe('1')
    for (const { vin } of shop.vehicles) {
      expect(vin).toMatch(/^[1245]ZZ[A-HJ-NPR-Z0-9]{14}$/)
      expect(vin[8]).toBe(checkDigit(vin))
    }
    expect(new Set(shop.vehicles.map(({ vin }) => vin)).size).toBe(shop.vehicles.length)
  })

  it('knows invented makes only', () => {
    const makes = new Set(shop.vehicles.map(({ description }) => description.split(' ')[0]))
    expect([...makes].sort()).toEqual(['Ashmoor', 'Dorrin', 'Kestwick', 'Pellowe', 'Vantrell'])
  })

  it('gives every person a name, a password and a PIN of six digits of their own', () => {
    for (const key of ['id', 'signInName', 'password', 'pin'] as const)
      expect(new Set(shop.staff.map((person) => person[key])).size).toBe(7)
    for (const { pin } of shop.staff) expect(pin).toMatch(/^\d{6}$/)
  })

  it('has one wrench overdue and one gauge quarantined', () => {
    const today = '2026-01-12'
    expect(
      shop.instruments.filter(({ dueOn }) => dueOn !== null && dueOn < today).map(({ code }) => code),
    ).toEqual(['W-05'])
    expect(shop.instruments.filter(({ quarantined }) => quarantined).map(({ code }) => code)).toEqual([
      'GA-4',
    ])
  })
})

describe('another now', () => {
  it.each(['2026-11-25T23:59:30.250Z', '2027-03-14T06:30:00Z', '2024-02-29T11:40:00+09:00'])(
    'shifts the dates to %s and changes nothing else',
    (now) => {
      expect(timeless(demoShop(now))).toEqual(timeless(shop))
    },
  )

  it.each([demoNow, '2026-12-31T11:40:00Z', '2029-02-28T11:40:00Z', '2024-02-29T11:40:00+09:00'])(
    'at %s: every tire carries a date code of its age, and the size of the sheet',
    (now) => {
      const { earlier, orders } = demoShop(now)
      const looks = [...earlier, ...orders].flatMap(({ lines }) =>
        lines.flatMap(({ draft }) => (draft.kind === 'tire.inspected' ? [draft] : [])),
      )
      const onArrival = looks.filter(({ payload }) => payload.when === 'arrival')
      expect(onArrival.length).toBeGreaterThan(50)
      for (const { payload, writtenAt } of onArrival) {
        const day = latestDayAt(writtenAt)
        const { dateCodeSeen, sizeSeen, tireAgeYears } = payload
        const made = dateCodeSeen?.readable ? readMade(dateCodeSeen.text, day) : null
        expect(made && tireAge(made, day).fullYears).toBe(tireAgeYears)
        expect(sizeSeen?.readable && readTireSize(sizeSeen.text).ok).toBe(true)
      }
    },
  )

  it('is the same shop every time', () => {
    expect(canonicalText(withoutFunctions(demoShop(demoNow)))).toBe(canonicalText(withoutFunctions(shop)))
  })

  it('must be an instant', () => {
    expect(() => demoShop('this morning')).toThrow('is not an instant')
  })
})

/** Transliteration and weights of 49 CFR 565.15(c), tables III and IV. */
const checkDigit = (vin: string): string => {
  const letters: Record<string, number> = {
    A: 1,
    B: 2,
    C: 3,
    D: 4,
    E: 5,
    F: 6,
    G: 7,
    H: 8,
    J: 1,
    K: 2,
    L: 3,
    M: 4,
    N: 5,
    P: 7,
    R: 9,
    S: 2,
    T: 3,
    U: 4,
    V: 5,
    W: 6,
    X: 7,
    Y: 8,
    Z: 9,
  }
  const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2]
  const rest =
    [...vin].reduce((sum, sign, index) => sum + (letters[sign] ?? Number(sign)) * (weights[index] ?? 0), 0) %
    11
  return rest === 10 ? 'X' : String(rest)
}

const withoutFunctions = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

/** The shop with every instant and day as a distance from its own now, without the hashes over them. */
const timeless = (demo: ReturnType<typeof demoShop>): unknown => {
  const { now } = demo.calendar
  const today = Date.parse(demo.calendar.on('2026-01-12'))
  const counted = (orders: typeof demo.orders) =>
    orders.map(({ entries, ...rest }) => ({ ...rest, length: entries.length }))
  return JSON.parse(
    JSON.stringify({ ...demo, earlier: counted(demo.earlier), orders: counted(demo.orders) }),
    (key, value) => {
      if (key === 'dateCodeSeen') return typeof value
      if (typeof value !== 'string') return value
      if (key === 'madeMonth' || /^[0-9a-f]{64}$/.test(value)) return typeof value
      // A warranty of so many months is of more days in a leap year.
      if (key === 'text') return value.replaceAll(/\d{4}-\d\d-\d\d|[A-Z][a-z]{2} \d+, \d{4}/g, 'a day')
      if (key === 'until' && /^\d{4}-\d\d-\d\d$/.test(value)) return typeof value
      if (/^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(value)) return Date.parse(value) - Date.parse(now)
      if (/^\d{4}-\d\d-\d\d$/.test(value)) return Date.parse(value) - today
      return value
    },
  )
}
