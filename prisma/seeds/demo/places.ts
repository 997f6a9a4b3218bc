import { demoId } from './seeded.ts'

export const shopId = demoId('shop')

/** What a place's law asks of the desk; the owner confirms it. Zero tolerance: any added cent needs consent. */
export type LawProfile = {
  readonly writtenEstimateAboveCents: number
  readonly overrunToleranceCents: number
  readonly consentChannels: readonly ('in-person' | 'link' | 'telephone')[]
  readonly retentionYears: number
  readonly secondPersonForTorque: boolean
  readonly confirmedOn: string | null
}

export type DemoLocation = {
  readonly id: string
  readonly name: string
  readonly altitudeFeet: number
  readonly bays: number
  readonly timeZone: string
  readonly lawProfile: LawProfile
}

const lawProfile: LawProfile = {
  writtenEstimateAboveCents: 0,
  overrunToleranceCents: 0,
  consentChannels: ['in-person', 'link', 'telephone'],
  retentionYears: 7,
  secondPersonForTorque: true,
  confirmedOn: null,
}

export const tamberStreet: DemoLocation = {
  id: demoId('location/tamber-street'),
  name: 'Tamber Street',
  altitudeFeet: 820,
  bays: 6,
  timeZone: 'America/New_York',
  lawProfile,
}

export const millraceRoad: DemoLocation = {
  id: demoId('location/millrace-road'),
  name: 'Millrace Road',
  altitudeFeet: 790,
  bays: 4,
  timeZone: 'America/New_York',
  lawProfile,
}

/** The tablets on the carts of Tamber Street, one a number. */
export const tabletId = (number: number): string => demoId(`device/bay-${number}`)
export const tabletNumbers = [1, 2, 3, 4, 5] as const
