import { FirstShopContent } from '@bayledger/contract/first-shop'
import { describe, expect, it } from 'vitest'
import { contentOf, emptyForm, type FirstShopForm, faultsInFirstShop } from './first-shop-form.ts'
import { firstShopFaults } from './first-shop-words.ts'

const start = emptyForm(
  {
    hours: [...Array(5).fill({ opens: '08:00', closes: '18:00' }), null, null],
    prices: { laborCentsPerHour: 13_000, taxRatePercentThousandths: 6_250, taxedClasses: ['parts'] },
  },
  'America/New_York',
)
const filled: FirstShopForm = {
  ...start,
  shopName: 'Corner Tire',
  placeName: 'Corner',
  altitudeFeet: 820,
  ownerName: 'A. Owner',
  signInName: 'owner',
  password: 'a quiet corner',
  passwordAgain: 'a quiet corner',
  pin: '418203',
  pinAgain: '418203',
}

describe('the form of the first page', () => {
  it('sends what the contract takes, weekdays alike and both other days closed', () => {
    expect(faultsInFirstShop(filled)).toEqual({})
    const sent = FirstShopContent.parse(contentOf(filled))
    expect(sent.hours.map((day) => day?.opens ?? null)).toEqual([...Array(5).fill('08:00'), null, null])
    expect(sent.prices).toEqual({
      laborCentsPerHour: 13_000,
      taxRatePercentThousandths: 6_250,
      taxedClasses: ['parts'],
    })
  })

  it.each([
    ['no name', { shopName: ' ' }, firstShopFaults.shopName],
    ['no place', { placeName: '' }, firstShopFaults.placeName],
    ['no time zone', { timeZone: null }, firstShopFaults.timeZone],
    ['no altitude', { altitudeFeet: null }, firstShopFaults.altitude],
    ['half a foot', { altitudeFeet: 820.5 }, firstShopFaults.altitude],
    ['a day that only opens', { saturday: { opens: '08:00', closes: '' } }, firstShopFaults.halfHours],
    ['a day that closes first', { sunday: { opens: '12:00', closes: '09:00' } }, firstShopFaults.hoursTurned],
    ['labor below nothing', { laborDollars: -1 }, firstShopFaults.labor],
    ['tax of 62.5 %', { taxPercent: 62.5 }, firstShopFaults.tax],
    ['tax that is no figure', { taxPercent: 'unreadable' }, firstShopFaults.tax],
    ['a sign-in name with a space', { signInName: 'a owner' }, firstShopFaults.signInName],
    ['another password below', { passwordAgain: 'a quiet corner ' }, firstShopFaults.passwordAgain],
    ['another PIN below', { pinAgain: '418204' }, firstShopFaults.pinAgain],
  ] as const)('says what to do about %s', (_what, change, words) => {
    const [field] = Object.keys(change)
    expect(faultsInFirstShop({ ...filled, ...change })).toEqual({ [String(field)]: words })
  })

  it('begins without a time zone where the browser runs on no place’s clock', () => {
    expect(emptyForm({ hours: [], prices: contentOf(filled).prices }, 'UTC').timeZone).toBeNull()
    expect(start.timeZone).toBe('America/New_York')
  })

  it('refuses an easy PIN and a short password before anything is sent', () => {
    expect(faultsInFirstShop({ ...filled, pin: '123456', pinAgain: '123456' }).pin).toMatch(
      /count up or down/,
    )
    expect(faultsInFirstShop({ ...filled, password: 'short', passwordAgain: 'short' }).password).toMatch(
      /at least 12/,
    )
  })
})
