import type { FirstShopContent } from '@bayledger/contract/first-shop'
import { passwordFault, pinFault } from '@bayledger/ledger/proof-of-person'
import type { TaxClass } from '@bayledger/reckoning/estimate'
import { peopleProblems } from '@bayledger/wording/en/people-problems'
import { timeZones } from '../../../lib/time-zones.ts'
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

/** An empty form with the first prices and hours of the trade, and the browser's own time zone where a place can be in it. */
export const emptyForm = ({ hours, prices }: Start, ownZone: string): FirstShopForm => {
  const typed = (day: number): TypedHours => hours[day] ?? { opens: '', closes: '' }
  return {
    shopName: '',
    placeName: '',
    timeZone: timeZones.some(({ value }) => value === ownZone) ? ownZone : null,
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
type FieldFaults = Readonly<Partial<Record<keyof Form, string>>>

/** What is missing or wrong, by field, in words; a field without one is not named. */
export const faultsInFirstShop = (form: Form): FieldFaults => {
  const found: Record<keyof Form, string | undefined> = {
    shopName: form.shopName.trim() === '' ? faults.shopName : undefined,
    placeName: form.placeName.trim() === '' ? faults.placeName : undefined,
    timeZone: form.timeZone === null ? faults.timeZone : undefined,
    altitudeFeet: isWithin(wholeOf(form.altitudeFeet, 1), -1_500, 20_000) ? undefined : faults.altitude,
    weekdays: hoursFault(form.weekdays),
    saturday: hoursFault(form.saturday),
    sunday: hoursFault(form.sunday),
    laborDollars: isWithin(wholeOf(form.laborDollars, 100), 0, 10_000_000) ? undefined : faults.labor,
    taxPercent: isWithin(wholeOf(form.taxPercent, 1_000), 0, 50_000) ? undefined : faults.tax,
    taxedClasses: undefined,
    ownerName: form.ownerName.trim() === '' ? faults.ownerName : undefined,
    signInName: /^[a-z][a-z0-9.-]{1,30}$/.test(form.signInName) ? undefined : faults.signInName,
    ...secretFaults(form),
  }
  return Object.fromEntries(Object.entries(found).filter(([, words]) => words !== undefined))
}

const secretFaults = ({ password, passwordAgain, pin, pinAgain }: Form) => {
  const ofPassword = passwordFault(password)
  const ofPin = pinFault(pin)
  return {
    password:
      ofPassword === null ? undefined : peopleProblems.PASSWORD_UNSUITABLE.detail({ why: ofPassword }),
    passwordAgain: password === passwordAgain ? undefined : faults.passwordAgain,
    pin: ofPin === null ? undefined : peopleProblems.PIN_UNSUITABLE.detail({ why: ofPin }),
    pinAgain: pin === pinAgain ? undefined : faults.pinAgain,
  }
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
