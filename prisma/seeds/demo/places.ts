import { type LawProfile, strictestLaw } from '../first-settings.ts'
import { demoId } from './seeded.ts'

export const shopId = demoId('shop')

type Hours = { readonly opens: string; readonly closes: string } | null

export type DemoLocation = {
  readonly id: string
  readonly name: string
  readonly address: string
  /** Seven days from Monday. */
  readonly hours: Hours[]
  readonly altitudeFeet: number
  readonly bays: number
  readonly timeZone: string
  readonly lawProfile: LawProfile
}

const weekday = { opens: '07:15', closes: '17:30' }
const hours: Hours[] = [
  weekday,
  weekday,
  weekday,
  weekday,
  weekday,
  { opens: '08:00', closes: '13:00' },
  null,
]

export const tamberStreet: DemoLocation = {
  id: demoId('location/tamber-street'),
  name: 'Tamber Street',
  address: '14 Tamber Street, Brindle Falls',
  hours,
  altitudeFeet: 820,
  bays: 6,
  timeZone: 'America/New_York',
  lawProfile: strictestLaw,
}

export const millraceRoad: DemoLocation = {
  id: demoId('location/millrace-road'),
  name: 'Millrace Road',
  address: '3 Millrace Road, Brindle Falls',
  hours,
  altitudeFeet: 790,
  bays: 4,
  timeZone: 'America/New_York',
  lawProfile: strictestLaw,
}

/** The tablets on the carts of Tamber Street, one a number. */
export const tabletId = (number: number): string => demoId(`device/bay-${number}`)
export const tabletNumbers = [1, 2, 3, 4, 5] as const
