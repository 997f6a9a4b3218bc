import { type LawProfile, strictestLaw } from '../first-settings.ts'
import { demoId } from './seeded.ts'

export const shopId = demoId('shop')

export type DemoLocation = {
  readonly id: string
  readonly name: string
  readonly altitudeFeet: number
  readonly bays: number
  readonly timeZone: string
  readonly lawProfile: LawProfile
}

export const tamberStreet: DemoLocation = {
  id: demoId('location/tamber-street'),
  name: 'Tamber Street',
  altitudeFeet: 820,
  bays: 6,
  timeZone: 'America/New_York',
  lawProfile: strictestLaw,
}

export const millraceRoad: DemoLocation = {
  id: demoId('location/millrace-road'),
  name: 'Millrace Road',
  altitudeFeet: 790,
  bays: 4,
  timeZone: 'America/New_York',
  lawProfile: strictestLaw,
}

/** The tablets on the carts of Tamber Street, one a number. */
export const tabletId = (number: number): string => demoId(`device/bay-${number}`)
export const tabletNumbers = [1, 2, 3, 4, 5] as const
