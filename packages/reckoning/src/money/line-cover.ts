import * as z from 'zod/mini'
import { WheelPosition } from '../wheels.ts'
import { type Moment, monthsAfter, sensorCover, WarrantyTerms } from './warranty.ts'

const Day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))
const Miles = z.int().check(z.gte(0))
const key = z.string().check(z.regex(/^[a-z0-9][a-z0-9.-]{0,60}$/i))

/** Why a vehicle came back after our work. */
export const ComebackCause = z.enum([
  'workmanship',
  'part-failed',
  'new-damage',
  'not-found',
  'something-else',
])
export type ComebackCause = z.infer<typeof ComebackCause>

/**
 * What the shop's own terms say of one line. `until`: the last day of the term; `untilMiles`: what the odometer may read at most.
 * `open`: in time, but nobody read an odometer that the terms need, so that a person decides.
 */
export const Cover = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('covered'),
    term: z.enum(['sensor', 'labor']),
    orderNumber: z.string().check(z.minLength(1), z.maxLength(60)),
    until: Day,
    untilMiles: z.nullable(Miles),
  }),
  z.strictObject({
    is: z.literal('charged'),
    why: z.enum([
      'new-damage',
      'days-over',
      'miles-over',
      'another-wheel',
      'part-not-ours',
      'work-not-ours',
      'wear-part',
    ]),
    until: z.nullable(Day),
    untilMiles: z.nullable(Miles),
  }),
  z.strictObject({ is: z.literal('open'), until: Day, untilMiles: z.nullable(Miles) }),
])
export type Cover = z.infer<typeof Cover>

/** A line with what the terms say of it. `decided`: what a person decided against that; the words are beside the price. */
export const LineCover = z.strictObject({
  lineKey: key,
  judged: Cover,
  decided: z.nullable(z.enum(['covered', 'charged'])),
})
export type LineCover = z.infer<typeof LineCover>

/** What an earlier order did, as far as a warranty can rest on it. `done`: the day when the keys went back. */
export const EarlierWork = z.strictObject({
  orderNumber: z.string(),
  done: z.strictObject({ day: Day, miles: z.nullable(Miles) }),
  /** Wheels that we worked on. */
  wheels: z.array(WheelPosition),
  /** Wheels in which we fitted a sensor. */
  sensors: z.array(WheelPosition),
  /** The vehicle was made to learn its sensors. */
  relearned: z.boolean(),
})
export type EarlierWork = z.infer<typeof EarlierWork>

/** What a comeback's cover rests on, beside its cause: when it came, the terms, and the earlier work, newest first. */
export const ComebackFacts = z.strictObject({
  came: z.strictObject({ day: Day, miles: z.nullable(Miles) }),
  terms: WarrantyTerms,
  works: z.array(EarlierWork),
})
export type ComebackFacts = z.infer<typeof ComebackFacts>

/** What a line is about: which of the terms it falls under. */
export type Kind = 'sensor' | 'wheel' | 'vehicle' | 'inspection' | 'wear-part'

/** One place of a line: a wheel, or the vehicle. */
export type Asked = { readonly kind: Kind; readonly wheel: WheelPosition | null }

/**
 * What the shop's terms say of one thing that a comeback needs. A sensor that we fitted is covered by its own term; the work to
 * renew it, and what bad work of ours spoiled, by the term of labor. A tire wears; new damage is nobody's warranty.
 *
 * @units Days as YYYY-MM-DD on the shop's clock; miles.
 * @source The shop's own terms; which of them a line falls under is this program's own rule.
 */
export const judgeCover = (
  { came, terms, works }: ComebackFacts,
  cause: ComebackCause,
  { kind, wheel }: Asked,
): Cover => {
  if (kind === 'wear-part') return charged('wear-part')
  if (cause === 'new-damage') return charged('new-damage')
  const isIn = (list: readonly WheelPosition[]) => (wheel === null ? list.length > 0 : list.includes(wheel))
  const relearned = (work: EarlierWork) => wheel === null && work.relearned
  const worked = works.find((work) => isIn(work.wheels) || relearned(work))
  if (worked === undefined) return charged(wheel === null ? 'work-not-ours' : 'another-wheel')
  const isOwnFault = cause === 'workmanship'
  // Work is free because it was bad, or because a part of ours has to be renewed by it.
  const fitted = works.find((work) => isIn(work.sensors))
  const rests = isOwnFault ? worked : works.find((work) => isIn(work.sensors) || relearned(work))
  const labor = rests === undefined ? charged('part-not-ours') : laborCover(terms, rests, came)
  if (kind !== 'sensor') return labor
  const own = fitted === undefined ? charged('part-not-ours') : ofSensor(terms, fitted, came)
  return isOwnFault && own.is !== 'covered' && labor.is === 'covered' ? labor : own
}

const charged = (why: Extract<Cover, { is: 'charged' }>['why']): Cover => ({
  is: 'charged',
  why,
  until: null,
  untilMiles: null,
})

const laborCover = (terms: WarrantyTerms, { orderNumber, done }: EarlierWork, came: Moment): Cover => {
  const until = monthsAfter(done.day, terms.laborMonths)
  return came.day <= until
    ? { is: 'covered', term: 'labor', orderNumber, until, untilMiles: null }
    : { is: 'charged', why: 'days-over', until, untilMiles: null }
}

const ofSensor = (terms: WarrantyTerms, { orderNumber, done }: EarlierWork, came: Moment): Cover => {
  const { cover, until, untilMiles } = sensorCover(terms, done, came)
  switch (cover) {
    case 'covered':
      return { is: 'covered', term: 'sensor', orderNumber, until, untilMiles }
    case 'person-decides':
      return { is: 'open', until, untilMiles }
    case 'ended':
      return { is: 'charged', why: came.day > until ? 'days-over' : 'miles-over', until, untilMiles }
  }
}
