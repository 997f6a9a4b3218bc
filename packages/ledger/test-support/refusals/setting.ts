import type { PricedEstimate, Work } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { PlannedStep } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { RefusalCode } from '../../src/admit/refusal-codes.ts'
import type { Appended } from '../../src/append.ts'
import type { Entry } from '../../src/entry.ts'
import { authorizedBundles, isLook } from '../../src/questions/answers.ts'
import type { Kind, PayloadOf } from '../../src/registry.ts'
import { estimatePayload } from '../../src/subjects/consent/estimate-payload.ts'
import { seal } from '../money.ts'
import {
  answersOf,
  decisionOf,
  issuePlan,
  oneSensorJob,
  pricedOf,
  stageWriters,
  workUntil,
} from '../one-sensor-job.ts'
import { type How, type OrderPen, orderPen } from '../order-pen.ts'
import { wordsOf } from '../seeded-ids.ts'
import { advisor, agreedBy, technician } from '../shop.ts'
import { closingOf } from '../step-payload.ts'
import { prices, tarn } from '../tarn.ts'

/** For each code: how a person would get it, and the values of the refusal, if it has any. */
export type Refusals<Code extends RefusalCode> = Readonly<
  Record<
    Code,
    readonly (readonly [what: string, attempt: () => Appended, values?: Readonly<Record<string, unknown>>])[]
  >
>

export const desk = { by: advisor, deviceId: null }
export const bay = { by: technician }

/** The payload that would close a step, changed for the test, written now. */
export const closeStep = <K extends Kind>(
  pen: OrderPen,
  stepKey: string,
  change: Partial<PayloadOf<K>> = {},
  how: How = bay,
): Appended => {
  const step = pen.state().plan?.plan.steps.find((candidate) => candidate.stepKey === stepKey)
  if (!step) throw new RangeError(`no step ${stepKey}`)
  const { kind, payload } = closingOf(pen.state(), step)
  // Whoever writes a check has made it, unless the test says otherwise.
  const checked =
    kind === 'torque.checked' && how.by !== 'system' && 'roles' in how.by
      ? { checkedBy: agreedBy(how.by) }
      : {}
  return pen.attempt(
    kind,
    { ...payload, ...checked, ...change } as PayloadOf<K> & PayloadOf<typeof kind>,
    how,
  )
}

/** The job up to the moment before one of its steps. */
export const before = (stepKey: string): OrderPen => {
  const known = writtenBefore.get(stepKey)
  if (known) return orderPen('one-sensor', known)
  const pen = oneSensorJob('decided')
  workUntil(pen, (key) => key === stepKey)
  writtenBefore.set(stepKey, [...pen.entries()])
  return pen
}

const writtenBefore = new Map<string, readonly Entry[]>()

export const changedEstimate = (
  pen: OrderPen,
  change: (estimate: PricedEstimate) => PricedEstimate,
): PayloadOf<'estimate.issued'> =>
  estimatePayload(change(pricedOf(pen)), pen.state().diagnosis?.written.entryId ?? '', seal)

/** The estimate with other works in each of its bundles. */
export const workedBy =
  (works: readonly Work[]) =>
  (estimate: PricedEstimate): PricedEstimate => ({
    ...estimate,
    bundles: estimate.bundles.map((bundle) => (isLook(bundle) ? bundle : { ...bundle, works: [...works] })),
  })

/** The estimate with nothing but the inspection. */
export const onlyTheLook = (estimate: PricedEstimate): PricedEstimate =>
  priceEstimate({
    ...estimate,
    prices,
    bundles: estimate.bundles
      .filter(({ bundleKey }) => bundleKey === 'look')
      .map(({ money, ...bundle }) => ({ ...bundle, lines: money.lines })),
  })

/** The estimate with so many percent off every work. */
export const withDiscount =
  (percent: number) =>
  (estimate: PricedEstimate): PricedEstimate =>
    priceEstimate({
      ...estimate,
      prices,
      bundles: estimate.bundles.map(({ money, ...bundle }) => ({
        ...bundle,
        lines: money.lines.filter(({ code }) => code !== 'supplies'),
      })),
      discount: {
        key: 'loyal',
        words: 'Loyal customers',
        percentThousandths: percent * 1_000,
        capCents: null,
      },
    })

/** The estimate with a dollar more for each unit of each line, before tax. */
export const dearer = (estimate: PricedEstimate): PricedEstimate =>
  priceEstimate({
    ...estimate,
    prices,
    bundles: estimate.bundles.map(({ money, ...bundle }) => ({
      ...bundle,
      lines: money.lines
        .filter(({ lineKey }) => lineKey !== 'supplies')
        .map((line) => ({
          ...line,
          unitCents: line.unitCents + 100,
          amountCents: line.amountCents + line.quantityHundredths,
        })),
    })),
  })

export const plainStem = (wheel: WheelPosition): Work => ({ kind: 'service-stem', wheel, valve: 'plain' })

export const attemptEstimate = (change: (estimate: PricedEstimate) => PricedEstimate): Appended => {
  const pen = oneSensorJob('confirmed')
  return pen.attempt('estimate.issued', changedEstimate(pen, change), desk)
}

/** An order whose only bundle has an alternative, shown and unanswered. */
export const withAlternative = (): OrderPen => {
  const pen = oneSensorJob('confirmed')
  const payload = changedEstimate(pen, (estimate) => {
    const [bundle] = estimate.bundles
    if (!bundle) throw new RangeError('no bundle')
    return {
      ...estimate,
      bundles: [
        ...estimate.bundles,
        { ...bundle, bundleKey: 'sensor.other', alternativeTo: bundle.bundleKey },
      ],
    }
  })
  pen.write('estimate.issued', payload, desk)
  return pen
}

export const strikeOf = (entryId: string, change: Partial<PayloadOf<'entry.struck'>> = {}) => ({
  entryId,
  reason: 'wrong-value' as const,
  words: null,
  secondPerson: null,
  ...change,
})

export const lastOf = (pen: OrderPen, kind: Kind): string =>
  pen.entries().findLast((entry) => entry.kind === kind)?.id ?? ''

export const note = { words: wordsOf('note') }

/** The steps of the plan in force, to be planned again. */
export const stepsOf = (pen: OrderPen): PlannedStep[] =>
  (pen.state().plan?.plan.steps ?? []).filter((step) => step.values !== null)

/** The job decided, its plan that of other works of the same authorized bundle. */
export const replanned = (works: readonly Work[], sheet: SpecificationSheet = tarn): OrderPen => {
  const pen = oneSensorJob('decided')
  const bundleKey = authorizedBundles(pen.state())[0]?.bundleKey ?? ''
  const plan = planJob(
    sheet,
    works.map((work) => ({ work, bundleKey })),
    2,
    noDangers,
  )
  pen.write('plan.issued', { plan, decisionId: null }, { by: 'system' })
  return pen
}

/** The job with a sheet whose torque nobody has verified, decided. */
export const unverified = (): OrderPen =>
  plannedWith({
    ...tarn,
    sources: { ...tarn.sources, studTorque: { ...tarn.sources.studTorque, verifiedBy: null } },
  })

/** A planned job on a vehicle whose wheel torque nobody has entered. */
export const withoutTorque = (): OrderPen =>
  plannedWith({ ...tarn, studs: 'missing', sources: { ...tarn.sources, studTorque: null } })

const plannedWith = (sheet: SpecificationSheet): OrderPen => {
  const pen = oneSensorJob('confirmed', 'unverified')
  pen.write('sheet.chosen', { sheet }, desk)
  stageWriters.estimated(pen)
  pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'authorized')), desk)
  issuePlan(pen, lastOf(pen, 'estimate.decided'))
  return pen
}
