import type { FirstShopContent } from '@bayledger/contract/first-shop'
import { passwordFault, pinFault } from '@bayledger/ledger/proof-of-person'
import type { TaxClass } from '@bayledger/reckoning/estimate'
import { peopleProblems } from '@bayledger/wording/en/people-problems'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { firstShopFaults as faults } from './first-shop-words.ts'

/** Clock times as HH:MM; both empty: closed. */
export type TypedHours = { readonly opens: string; readonly closes: string }

export type FirstShopForm = {
  readonly shopName: string
  readonly placeName: string
  /** `null`: not chosen, because this browser's own is not one of a place. */
  readonly timeZone: string | null
  readonly altitudeFeet: TypedFigure
  readonly weekdays: TypedHours
  readonly saturday: TypedHours
  readonly sunday: TypedHours
  readonly laborDollars: TypedFigure
  readonly taxPercent: TypedFigure
  readonly taxedClasses: readonly TaxClass[]
  readonly ownerName: string
  readonly signInName: string
  readonly password: string
  readonly passwordAgain: string
  readonly pin: string
  readonly pinAgain: string
}

type Start = Pick<FirstShopContent, 'hours' | 'prices'>

/** The zones that a place can be in. */
export const timeZones: readonly string[] = Intl.supportedValuesOf('timeZone')

/** An empty form with the first prices and hours of the trade, and the browser's own time zone where a place can be in it. */
export const emptyForm = ({ hours, prices }: Start, ownZone: string): FirstShopForm => {
  const typed = (day: number): TypedHours => hours[day] ?? { opens: '', closes: '' }
  return {
    shopName: '',
    placeName: '',
    timeZone: timeZones.includes(ownZone) ? ownZone : null,
    altitudeFeet: null,
    weekdays: typed(0),
    saturday: typed(5),
    sunday: typed(6),
    laborDollars: prices.laborCentsPerHour / 100,
    taxPercent: prices.taxRatePercentThousandths / 1_000,
    taxedClasses: prices.taxedClasses,
    ownerName: '',
    signInName: '',
    password: '',
    passwordAgain: '',
    pin: '',
    pinAgain: '',
  }
}

const wholeOf = (typed: TypedFigure, times: number): number | null => {
  if (typeof typed !== 'number') return null
  const whole = Math.round(typed * times)
  return Math.abs(typed * times - whole) < 0.000_01 ? whole : null
}

const isWithin = (figure: number | null, low: number, high: number): figure is number =>
  figure !== null && figure >= low && figure <= high

const hoursFault = ({ opens, closes }: TypedHours): string | undefined => {
  if ((opens === '') !== (closes === '')) return faults.halfHours
  return opens !== '' && opens >= closes ? faults.hoursTurned : undefined
}

type Form = FirstShopForm

/** What is missing or wrong first, from top to bottom, in words; undefined: nothing. */
export const missingInFirstShop = (form: Form): string | undefined => {
  if (form.shopName.trim() === '') return faults.shopName
  if (form.placeName.trim() === '') return faults.placeName
  if (form.timeZone === null) return faults.timeZone
  if (!isWithin(wholeOf(form.altitudeFeet, 1), -1_500, 20_000)) return faults.altitude
  const ofHours = [form.weekdays, form.saturday, form.sunday].map(hoursFault).find(Boolean)
  if (ofHours !== undefined) return ofHours
  if (!isWithin(wholeOf(form.laborDollars, 100), 0, 10_000_000)) return faults.labor
  if (!isWithin(wholeOf(form.taxPercent, 1_000), 0, 50_000)) return faults.tax
  if (form.ownerName.trim() === '') return faults.ownerName
  if (!/^[a-z][a-z0-9.-]{1,30}$/.test(form.signInName)) return faults.signInName
  return secretsFault(form)
}

const secretsFault = ({ password, passwordAgain, pin, pinAgain }: Form): string | undefined => {
  const ofPassword = passwordFault(password)
  if (ofPassword !== null) return peopleProblems.PASSWORD_UNSUITABLE.detail({ why: ofPassword })
  if (password !== passwordAgain) return faults.passwordAgain
  const ofPin = pinFault(pin)
  if (ofPin !== null) return peopleProblems.PIN_UNSUITABLE.detail({ why: ofPin })
  return pin === pinAgain ? undefined : faults.pinAgain
}

/** The shop as it is sent, from a form in which nothing is missing. */
export const contentOf = (form: Form): FirstShopContent => {
  const day = (hours: TypedHours) => (hours.opens === '' ? null : hours)
  const weekday = day(form.weekdays)
  return {
    shopName: form.shopName,
    placeName: form.placeName,
    timeZone: form.timeZone ?? '',
    altitudeFeet: wholeOf(form.altitudeFeet, 1) ?? 0,
    hours: [weekday, weekday, weekday, weekday, weekday, day(form.saturday), day(form.sunday)],
    prices: {
      laborCentsPerHour: wholeOf(form.laborDollars, 100) ?? 0,
      taxRatePercentThousandths: wholeOf(form.taxPercent, 1_000) ?? 0,
      taxedClasses: [...form.taxedClasses],
    },
    owner: {
      name: form.ownerName,
      signInName: form.signInName,
      password: form.password,
      pin: form.pin,
    },
  }
}
