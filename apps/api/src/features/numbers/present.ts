import type { Bar, Picture } from '@bayledger/contract/numbers'
import type { Judged } from '@bayledger/reckoning/ready/ready-error'
import { isPlausible } from '@bayledger/reckoning/ready/step-seconds'
import { comebackCauses } from '@bayledger/wording/en/comeback-causes'
import { english } from '@bayledger/wording/en/english'
import { numbers as words } from '@bayledger/wording/en/numbers'
import type { EndedOrder } from './store.ts'

/** A failed sensor with what is known of it. `isOurs`: fitted here. */
export type FailedWithPast = {
  readonly orderId: string
  readonly isOurs: boolean
  readonly lot: string | null
  readonly ageMonths: number | null
}

/** One thing that is counted, of one order. `counts`: whether it is in the numerator of a share. */
type Seen = {
  readonly label: string
  readonly orderId: string
  readonly minutes?: number
  readonly counts?: boolean
}

/** Every picture, from the orders of the range. */
export const presentPictures = (
  orders: readonly EndedOrder[],
  failed: readonly FailedWithPast[],
  judged: readonly (Judged & { readonly orderId: string })[],
): Picture[] => {
  const placeOf = new Map(orders.map(({ orderId }, place) => [orderId, place]))
  const picture = (code: Picture['code'], seen: readonly Seen[], order?: readonly string[]): Picture => ({
    code,
    bars: barsOf(seen, placeOf, order),
  })
  const causeOf = ({ figures }: EndedOrder) =>
    figures.cause === null ? words.noCause : english.findingTitles[figures.cause]
  const worked = orders.filter(({ figures }) => figures.steps.length > 0)
  return [
    picture('promises', orders.flatMap(promiseSeen), words.promises.order),
    picture(
      'ready-error',
      judged.map(({ orderId, estimated, wasReady }) => ({
        orderId,
        label: words.offBy.label((wasReady - estimated) / 60_000),
      })),
      words.offBy.order,
    ),
    picture(
      'comebacks',
      orders
        .filter(({ figures }) => figures.comebackOf !== null)
        .map((order) => ({ orderId: order.orderId, label: causeOf(order) })),
    ),
    picture(
      'comeback-causes',
      orders
        .filter(({ figures }) => figures.comebackOf !== null)
        .map(({ orderId, figures }) => ({
          orderId,
          label: figures.comebackCause ? comebackCauses[figures.comebackCause] : words.causeNotRecorded,
        })),
    ),
    picture(
      'causes',
      orders.map((order) => ({ orderId: order.orderId, label: causeOf(order) })),
    ),
    picture(
      'consent',
      orders.flatMap(({ orderId, figures }) =>
        figures.offered.flatMap(({ title, answer }) =>
          answer === null ? [] : [{ orderId, label: words.bundles[title], counts: answer === 'authorized' }],
        ),
      ),
    ),
    picture(
      'job-minutes',
      worked.map(({ orderId, figures }) => ({
        orderId,
        label: figures.job === null ? words.lookOnly : words.bundles[figures.job],
        minutes: figures.steps.filter(isPlausible).reduce((sum, { seconds }) => sum + seconds, 0) / 60,
      })),
    ),
    picture(
      'step-minutes',
      worked.flatMap(({ orderId, figures }) =>
        figures.steps
          .filter(isPlausible)
          .map(({ code, seconds }) => ({ orderId, label: words.steps[code], minutes: seconds / 60 })),
      ),
    ),
    picture(
      'sensor-lots',
      failed.map(({ orderId, isOurs, lot }) => ({ orderId, label: words.lot(isOurs, lot) })),
    ),
    picture(
      'sensor-ages',
      failed.map(({ orderId, ageMonths }) => ({ orderId, label: words.age.label(ageMonths) })),
      words.age.order,
    ),
  ]
}

/** Ready by what was promised first, by another time that was promised later, or late. */
const promiseSeen = ({ orderId, figures }: EndedOrder): Seen[] => {
  const { promises, readyAt } = figures
  if (readyAt === null) return []
  const kept = (promisedAt: string): boolean => Date.parse(readyAt) <= Date.parse(promisedAt)
  const { first, last } = promises
  if (first === null || last === null) return [{ orderId, label: words.promises.none }]
  if (kept(first)) return [{ orderId, label: words.promises.first }]
  return [{ orderId, label: kept(last) ? words.promises.later : words.promises.late }]
}

/** One bar a label: in the order given, else the most first. */
const barsOf = (
  seen: readonly Seen[],
  placeOf: ReadonlyMap<string, number>,
  order: readonly string[] | undefined,
): Bar[] => {
  const bars = [...Map.groupBy(seen, ({ label }) => label)].map(([label, own]): Bar => {
    const isShare = own.some(({ counts }) => counts !== undefined)
    const minutes = own.flatMap((one) => one.minutes ?? [])
    return {
      label,
      count: isShare ? own.filter(({ counts }) => counts).length : own.length,
      of: isShare ? own.length : null,
      minutes: spreadOf(minutes),
      orders: [...new Set(own.flatMap(({ orderId }) => placeOf.get(orderId) ?? []))],
    }
  })
  return order
    ? bars.toSorted((one, other) => order.indexOf(one.label) - order.indexOf(other.label))
    : bars.toSorted((one, other) => rank(other) - rank(one) || (one.label < other.label ? -1 : 1))
}

const rank = ({ count, of, minutes }: Bar): number => minutes?.middle ?? of ?? count

/** The middle of some minutes and those between which half of them are; `null` of none. */
const spreadOf = (minutes: readonly number[]): Bar['minutes'] => {
  const sorted = minutes.toSorted((one, other) => one - other)
  const at = (part: number): number => sorted[Math.floor((sorted.length - 1) * part)] ?? 0
  return sorted.length === 0
    ? null
    : { middle: rounded(at(0.5)), from: rounded(at(0.25)), until: rounded(at(0.75)) }
}

const rounded = (minutes: number): number => Math.round(minutes * 10) / 10
