import type { Air, LoadClass, Place } from './air.test-support.ts'

export const corners = ['LF', 'RF', 'RR', 'LR'] as const
export type Corner = (typeof corners)[number]
export type EachCorner<T> = Readonly<Record<Corner, T>>

export const eachCorner = <T>(make: (corner: Corner) => T): EachCorner<T> => ({
  LF: make('LF'),
  RF: make('RF'),
  RR: make('RR'),
  LR: make('LR'),
})

export type Axles<T> = { readonly front: T; readonly rear: T }

export const axleOfCorner = (corner: Corner): keyof Axles<unknown> =>
  corner === 'LF' || corner === 'RF' ? 'front' : 'rear'

/** What is known about a vehicle before anything is measured: its sheet. */
export type Sheet = {
  readonly label: Axles<number>
  readonly loadClass: LoadClass
  readonly casing: 'steel' | 'polyester' | 'unread'
  readonly sidewallMaximum: number
}

/** A vehicle as it truly is; pressures in psi, temperatures in °F, heights in meters. Only a test can know it. */
export type TrueVehicle = {
  readonly sheet: Sheet
  /** Where the pressures were last set, and whether anybody remembers. */
  readonly lastSet: Place & { readonly temperatureKnown: boolean; readonly altitudeKnown: boolean }
  readonly here: Place
  readonly arrival: 'cold' | 'driven' | 'indoor-warmed'
  /** What the shop hears about the tires; they may be driven and nobody says so. */
  readonly told: 'cold' | 'driven' | 'indoor-warmed' | null
  readonly air: EachCorner<Air>
  /** The temperature of the air in each tire as it is gauged. */
  readonly airTemperature: EachCorner<number>
  /** By how many °F a rim, and so the sensor on it, is hotter than the air in its tire. */
  readonly rimHotter: EachCorner<number>
  readonly leaking: readonly Corner[]
  readonly dead: readonly Corner[]
  readonly dragging: readonly Corner[]
  readonly overfilled: readonly Corner[]
  /** Whether the sensors take the open air at the sea for the open air here. */
  readonly sensorsReferToSea: boolean
  /** An earlier visit: how many days ago, and what the tires held. */
  readonly earlier: { readonly daysAgo: number; readonly place: Place; readonly air: EachCorner<Air> } | null
}
