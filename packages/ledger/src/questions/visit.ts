import { type WheelShortfall, wheelShortfalls } from '@bayledger/reckoning/diagnosis/facts/wheel-shortfall'
import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import type { Distance, Temperature } from '@bayledger/reckoning/quantity'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { answerTo, isLook, newestBundles } from './answers.ts'
import { evidenceOf } from './evidence-of.ts'
import { type Air, airGauged, airSet } from './history-of.ts'
import { type BundleNamed, namedBundle } from './named.ts'

/** Readings are compared as if the air in the tire had this temperature; any would do as well. */
export const comparedAt: Temperature = { value: 68, unit: 'F' }

/** A tire's pressure at one moment of a visit. */
export type PastReading = {
  readonly wheel: WheelPosition
  readonly when: 'received' | 'left'
  readonly at: string
  /** As the gauge showed it, psi. */
  readonly psi: number
  /** As the same air shows it at `comparedAt`, psi; `null` where nobody knew its temperature or the altitude. */
  readonly comparedPsi: number | null
}

/** What the customer was offered, and how they answered. `money`: the side that holds its sums. */
export type PastOffer = {
  readonly bundle: BundleNamed
  readonly answer: 'authorized' | 'declined' | 'deferred'
  readonly deferredUntil: string | null
  readonly answeredAt: string
  readonly money: string
}

/** One visit as the vehicle's own page shows it: codes and figures, no name and no words of anybody. */
export type Visit = {
  readonly orderId: string
  readonly customerId: string
  /** As it came; `null`: nobody read it. */
  readonly odometer: Distance | null
  readonly comebackOf: string | null
  /** When the keys went back: a warranty begins with that; `null`: not yet. */
  readonly handedBackAt: string | null
  readonly cause: { readonly code: FindingCode; readonly wheels: readonly WheelPosition[] } | null
  readonly offers: readonly PastOffer[]
  readonly readings: readonly PastReading[]
  /** What each tire lacked as it came. */
  readonly shortfalls: readonly WheelShortfall[]
  readonly fitted: readonly {
    readonly wheel: WheelPosition
    readonly sensorId: string
    readonly at: string
  }[]
}

/** An order as one visit of its vehicle; `null` before it is opened. */
export const visitOf = (state: OrderState): Visit | null => {
  const { opened, diagnosis, orderId } = state
  if (!opened) return null
  const primary = diagnosis?.diagnosis.findings.find(({ code }) => code === diagnosis.diagnosis.primary)
  return {
    orderId,
    customerId: opened.customerId,
    odometer: opened.odometer,
    comebackOf: opened.comebackOf,
    handedBackAt: state.handedBack?.written.writtenAt ?? null,
    cause: primary ? { code: primary.code, wheels: primary.wheels } : null,
    offers: newestBundles(state).flatMap((bundle): PastOffer[] => {
      const decision = answerTo(state, bundle)
      if (!decision || isLook(bundle)) return []
      const { answer, deferredUntil, written } = decision
      return [
        {
          bundle: namedBundle(bundle),
          answer,
          deferredUntil,
          answeredAt: written.writtenAt,
          money: bundle.money,
        },
      ]
    }),
    readings: readingOrder.flatMap((wheel) => [
      ...readingOf(wheel, 'received', airGauged(state, wheel, 'arrival')),
      ...readingOf(wheel, 'left', airGauged(state, wheel, 'closing') ?? airSet(state.work[wheel]?.pressure)),
    ]),
    shortfalls: wheelShortfalls(evidenceOf(state, null)),
    fitted: readingOrder.flatMap((wheel) => {
      const fitted = state.work[wheel]?.fitted
      return fitted ? [{ wheel, sensorId: fitted.sensorId, at: fitted.written.writtenAt }] : []
    }),
  }
}

const readingOf = (wheel: WheelPosition, when: PastReading['when'], air: Air | null): PastReading[] => {
  if (air === null) return []
  const gauge = inKilopascals(air.pressure)
  const open = air.altitudeFeet === null ? null : airPressureAtAltitude(metersFromFeet(air.altitudeFeet))
  const compared =
    air.temperature && open
      ? shiftPressure({
          gauge,
          from: inKelvin(air.temperature),
          to: inKelvin(comparedAt),
          airBefore: open,
          airAfter: open,
        })
      : null
  return [
    {
      wheel,
      when,
      at: air.written.writtenAt,
      psi: kilopascalsIn('psi', gauge),
      comparedPsi: compared === null ? null : kilopascalsIn('psi', compared),
    },
  ]
}

/** What was put off or declined at these visits, newest first, and neither bought nor offered again since. */
export const stillOffered = (
  visits: readonly Visit[],
): { readonly visit: Visit; readonly offer: PastOffer }[] => {
  const settled = new Set<string>()
  return visits.flatMap((visit) =>
    visit.offers.flatMap((offer) => {
      const of = `${offer.bundle.title} ${offer.bundle.wheels.join()}`
      if (settled.has(of)) return []
      settled.add(of)
      return offer.answer === 'authorized' ? [] : [{ visit, offer }]
    }),
  )
}
