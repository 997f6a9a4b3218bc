import type { OpenOffer, PastVisit, VehiclePage } from '@bayledger/contract/vehicle-page'
import type { PastOffer, Visit } from '@bayledger/ledger/questions/visit'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { placardOf, type SpecificationSheet, tiresOf } from '@bayledger/reckoning/sheet'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { shortfallWords } from '@bayledger/wording/shortfalls'
import { wheelList } from '@bayledger/wording/wheels'
import type { VisitRow } from './store.ts'

export const presentVisit = (visit: Visit, row: VisitRow, ofThisOwner: boolean): PastVisit => ({
  orderId: ofThisOwner ? visit.orderId : null,
  number: row.number,
  openedAt: row.openedAt.toISOString(),
  isOpen: row.isOpen,
  ofThisOwner,
  isComeback: visit.comebackOf !== null,
  cause: visit.cause && causeWords(visit.cause),
  done: visit.offers.flatMap(({ answer, bundle }) =>
    answer === 'authorized' ? [bundleTitle(english, bundle)] : [],
  ),
})

const causeWords = ({ code, wheels }: NonNullable<Visit['cause']>): string => {
  const title = english.findingTitles[code]
  return wheels.length === 0 ? title : `${title}: ${wheelList(english.wheels, wheels)}`
}

export const presentOffer = (
  { bundle, answer, deferredUntil, answeredAt }: PastOffer,
  number: string,
  totalCents: number | null,
): OpenOffer => ({
  number,
  words: bundleTitle(english, bundle),
  answer: answer === 'deferred' ? 'deferred' : 'declined',
  deferredUntil,
  answeredAt,
  totalCents,
})

/** What each tire lacked at the newest visit on which one was gauged. `visits`: newest first. */
export const presentLacks = (
  visits: readonly Visit[],
  numberOf: (visit: Visit) => string,
): VehiclePage['lacks'] => {
  const at = (visit: Visit) => visit.readings.find(({ when }) => when === 'received')?.at
  const last = visits.find((visit) => at(visit) !== undefined)
  const gaugedAt = last && at(last)
  if (last === undefined || gaugedAt === undefined) return null
  return {
    number: numberOf(last),
    at: gaugedAt,
    wheels: last.shortfalls.map((shortfall) => ({
      wheel: shortfall.wheel,
      words: shortfallWords(english.shortfalls, shortfall),
    })),
  }
}

/** The label's figures and the warning points, psi; `null` where no sheet has them. */
export const pressuresOf = (sheet: SpecificationSheet | undefined): Pick<VehiclePage, 'label' | 'warnAt'> => {
  const placard = placardOf(sheet)
  if (!placard) return { label: null, warnAt: null }
  const warn = (axle: 'front' | 'rear'): number => {
    const trigger = sheet?.warnAtPsi?.[axle] ?? null
    return kilopascalsIn(
      'psi',
      warningPoint({
        placard: inKilopascals({ value: placard[axle].psi, unit: 'psi' }),
        makersTrigger: trigger === null ? null : inKilopascals({ value: trigger, unit: 'psi' }),
        loadClass: tiresOf(sheet)?.[axle].loadClass ?? null,
        column: 'psi',
      }),
    )
  }
  return {
    label: { front: placard.front.psi, rear: placard.rear.psi, spare: placard.spare?.psi ?? null },
    warnAt: { front: warn('front'), rear: warn('rear') },
  }
}
