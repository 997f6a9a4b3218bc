import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { PricedEstimate } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { digestOf } from '../src/digests.ts'
import type { Entry } from '../src/entry.ts'
import { isLook, newestBundles } from '../src/questions/answers.ts'
import { authorizedWorks, openedTires } from '../src/questions/authorized-works.ts'
import { evidenceOf } from '../src/questions/evidence-of.ts'
import { readySteps } from '../src/questions/gates.ts'
import { agreedSearches } from '../src/questions/money.ts'
import { tireDangers } from '../src/questions/tire-dangers.ts'
import type { PayloadOf } from '../src/registry.ts'
import { estimatePayload } from '../src/subjects/consent/estimate-payload.ts'
import { keptMoney, seal as sealMoney } from './money.ts'
import { type OrderPen, orderPen } from './order-pen.ts'
import { idOf, wordsOf } from './seeded-ids.ts'
import { advisor, gauge, lead, locationId, technician } from './shop.ts'
import { closingOf } from './step-payload.ts'
import { asReceived, oldRightRearId, prices, tarn } from './tarn.ts'

/** Whatever knows how far an order has come. */
type StateOf = Pick<OrderPen, 'state'>

/** How far the job has come; each stage holds those before it. */
export const stages = [
  'written-up',
  'checked',
  'confirmed',
  'estimated',
  'shown',
  'decided',
  'worked',
  'sealed',
  'handed-back',
] as const
export type Stage = (typeof stages)[number]

/** A whole job: the right rear sensor is silent, is replaced, and the light is proven to stay off. */
export const oneSensorJob = (until: Stage, name = 'one-sensor'): OrderPen => {
  const key = `${name}/${until}`
  const known = written.get(key)
  if (known) return orderPen(name, known)
  const pen = orderPen(name)
  for (const stage of stages.slice(0, stages.indexOf(until) + 1)) stageWriters[stage](pen)
  written.set(key, [...pen.entries()])
  return pen
}

/** Jobs are the same at every run, so each is written once. */
const written = new Map<string, readonly Entry[]>()

/** Goes on with an order that a test has changed on its way. */
export const stageWriters: Readonly<Record<Stage, (pen: OrderPen) => void>> = {
  'written-up': (pen) => writeUp(pen),
  checked: (pen) => checkArrival(pen),
  confirmed: (pen) => confirmFindings(pen),
  estimated: (pen) => issueEstimate(pen),
  shown: (pen) => {
    const revision = pen.state().estimates.length
    pen.write('estimate.shown', { revision, channel: 'in-person', linkId: null }, { by: advisor })
  },
  decided: (pen) => decide(pen, 'authorized'),
  worked: (pen) => workUntil(pen, () => false),
  sealed: (pen) => seal(pen),
  'handed-back': (pen) => {
    pen.write('order.handed_back', handBack, { by: advisor, deviceId: null })
  },
}

export const handBack: PayloadOf<'order.handed_back'> = {
  odometer: { value: 88_156, unit: 'mi' },
  lockingKeyReturned: null,
  retorqueAdvised: true,
  signature: wordsOf('signature'),
  releaseAgreedBy: null,
  odometerConfirmed: false,
}

export const opening: PayloadOf<'order.opened'> = {
  locationId,
  customerId: idOf('customer'),
  vehicleId: idOf('vehicle'),
  waitsHere: true,
  promisedAt: '2026-01-12T20:00:00.000Z',
  odometer: { value: 88_141, unit: 'mi' },
  odometerConfirmed: false,
  comebackOf: null,
}

export const owner = { relation: 'owner' as const, name: wordsOf('owner') }

export const writeUp = (pen: OrderPen, change: Partial<PayloadOf<'order.opened'>> = {}): void => {
  const atTheDesk = { by: advisor, deviceId: null }
  pen.write('order.opened', { ...opening, ...change }, { ...atTheDesk, given: { orderNumber: 'T-2602' } })
  pen.write(
    'complaint.recorded',
    { words: wordsOf('complaint'), reportedLight: 'flash-then-solid', events: [] },
    atTheDesk,
  )
  pen.write('sheet.chosen', { sheet: tarn }, atTheDesk)
  pen.write(
    'authority.given',
    {
      to: ['look', 'drive'],
      by: owner,
      channel: 'in-person',
      money: sealMoney({ lookFeeCents: 5_200 }),
      lookFee: 'charged',
    },
    atTheDesk,
  )
}

export const surroundings: PayloadOf<'surroundings.recorded'> = {
  surroundings: {
    outdoor: { value: 27, unit: 'F' },
    overnightLow: { value: 11, unit: 'F' },
    tires: 'cold',
    tire: null,
    altitudeFeet: 820,
  },
  minutesDriven: 15,
  lastSet: { temperature: { value: 50, unit: 'F' }, altitudeFeet: 820 },
}

/** What the arrival check records of one wheel. */
export const arrivalOf = (
  wheel: WheelPosition,
  change: Partial<PayloadOf<'wheel.checked'>> = {},
): PayloadOf<'wheel.checked'> => {
  const received = wheel === 'SP' ? { psi: 58, id: null } : asReceived[wheel]
  return {
    phase: 'arrival',
    stepKey: null,
    wheel,
    mounted: wheel === 'SP' ? null : 'road',
    gauge: { pressure: { value: received.psi, unit: 'psi' }, instrument: gauge },
    sensor:
      wheel === 'SP'
        ? null
        : received.id === null
          ? { answer: 'silent', tries: 3 }
          : {
              answer: 'answered',
              tries: 1,
              id: received.id,
              pressure: { value: Math.round((received.psi - 0.4) * 10) / 10, unit: 'psi' },
              temperature: { value: 27, unit: 'F' },
              battery: 'ok',
              frequencyMHz: 315,
              followsPressure: null,
            },
    notPossible: [],
    ...change,
  }
}

/** What is seen of a tire from outside; nothing wrong with any. */
export const tireOf = (
  wheel: WheelPosition,
  change: Partial<PayloadOf<'tire.inspected'>> = {},
): PayloadOf<'tire.inspected'> => ({
  when: 'arrival',
  stepKey: null,
  wheel,
  valve: wheel === 'SP' ? 'plain' : 'clamp-in',
  stem: 'sound',
  treadDepth32nds: 7,
  tireAgeYears: 3,
  sensorAgeMonths: wheel === 'SP' ? null : 60,
  sealantSeen: false,
  tireDamage: [],
  fastenerDamage: [],
  inside: null,
  ...change,
})

export const storedAsReceived: PayloadOf<'module.read'> = {
  phase: 'arrival',
  stepKey: null,
  state: 'read',
  notation: 'hex',
  ids: Object.fromEntries(roadPositions.map((wheel) => [wheel, asReceived[wheel].id ?? oldRightRearId])),
  codes: [{ class: 'no-signal', wheel: 'RR', text: 'no signal, right rear' }],
  strayIds: [],
  why: null,
}

const checkArrival = (pen: OrderPen): void => {
  const by = technician
  pen.write('surroundings.recorded', surroundings, { by })
  pen.write(
    'telltale.observed',
    { phase: 'arrival', stepKey: null, lampCheck: 'lights', behavior: 'flash-then-solid', timed: null },
    { by },
  )
  const wheels: readonly WheelPosition[] = [...roadPositions, 'SP']
  for (const wheel of wheels) pen.write('wheel.checked', arrivalOf(wheel), { by })
  for (const wheel of wheels) pen.write('tire.inspected', tireOf(wheel), { by })
  pen.write('module.read', storedAsReceived, { by })
}

/** The findings that the order's own facts make, as an entry's payload. */
export const findingsOf = (pen: OrderPen): PayloadOf<'diagnosis.issued'> => {
  const evidence = evidenceOf(pen.state(), null)
  return { evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) }
}

const confirmFindings = (pen: OrderPen): void => {
  const { id } = pen.write('diagnosis.issued', findingsOf(pen), { by: technician })
  pen.write(
    'diagnosis.confirmed',
    { diagnosisId: id, verdict: { agrees: true } },
    { by: technician, restsOn: [id] },
  )
}

/** The next version of the estimate that the findings allow, with its money. */
export const pricedOf = (pen: StateOf, list: PriceList = prices): PricedEstimate => {
  const { diagnosis, estimates } = pen.state()
  if (!diagnosis) throw new RangeError('an estimate follows findings')
  return priceEstimate({
    bundles: offerBundles({
      diagnosis: diagnosis.diagnosis,
      sheet: pen.state().sheet?.sheet ?? tarn,
      prices: list,
      look: 'charged',
      opened: openedTires(pen.state()),
    }),
    prices: list,
    agreed: agreedSearches(pen.state(), keptMoney),
    revision: estimates.length + 1,
    readyAt: '2026-01-12T20:00:00.000Z',
  })
}

/** The next version of the estimate, as an entry's payload. */
export const estimateOf = (pen: StateOf): PayloadOf<'estimate.issued'> =>
  estimatePayload(pricedOf(pen), pen.state().diagnosis?.written.entryId ?? '', sealMoney)

const issueEstimate = (pen: OrderPen): void => {
  pen.write('estimate.issued', estimateOf(pen), { by: advisor, deviceId: null })
}

type GivenAnswer = PayloadOf<'estimate.decided'>['answers'][number]

/** One answer to every bundle that waits for one. */
export const answersOf = (pen: StateOf, answer: GivenAnswer['answer']): GivenAnswer[] =>
  newestBundles(pen.state())
    .filter((bundle) => !isLook(bundle))
    .map(({ bundleKey, cautions }) => ({
      bundleKey,
      answer,
      deferredUntil: answer === 'deferred' ? '2026-03-01' : null,
      cautionsShown: answer === 'authorized' ? [] : cautions,
    }))

export const decisionOf = (
  pen: StateOf,
  answers: GivenAnswer[],
  change: Partial<PayloadOf<'estimate.decided'>> = {},
): PayloadOf<'estimate.decided'> => {
  const issued = pen.state().estimates.at(-1)
  if (!issued) throw new RangeError('a decision follows an estimate')
  return {
    revision: issued.scope.revision,
    digest: issued.digest,
    answers,
    by: owner,
    consent: { channel: 'in-person', signature: { form: 'typed', digest: wordsOf('signature') } },
    shown: wordsOf('shown'),
    language: 'en',
    agreesToElectronicRecord: true,
    wantsRemovedParts: false,
    ...change,
  }
}

/** Records the customer's answers; the server then writes the job plan that follows from them. */
export const decide = (pen: OrderPen, answer: GivenAnswer['answer']): void => {
  const decided = pen.write('estimate.decided', decisionOf(pen, answersOf(pen, answer)), {
    by: advisor,
    deviceId: null,
  })
  issuePlan(pen, decided.id)
}

export const issuePlan = (pen: OrderPen, decisionId: string): void => {
  const works = authorizedWorks(pen.state())
  const planVersion = (pen.state().plan?.plan.planVersion ?? 0) + 1
  pen.write(
    'plan.issued',
    {
      plan: planJob(pen.state().sheet?.sheet ?? tarn, works, planVersion, tireDangers(pen.state())),
      decisionId,
    },
    { by: 'system' },
  )
}

/** Closes ready steps one by one until a step is reached that the test wants for itself, or none is left. */
export const workUntil = (pen: OrderPen, isMine: (stepKey: string) => boolean): void => {
  for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
    if (isMine(step.stepKey)) return
    const { kind, payload } = closingOf(pen.state(), step)
    pen.write(kind, payload, { by: step.closedBy === 'torque.checked' ? lead : technician })
  }
}

export const sealOf = (pen: StateOf, supersedes: string | null = null): PayloadOf<'report.sealed'> => ({
  composedFrom: { seq: pen.state().seq, hash: pen.state().headHash },
  pdfSha256: wordsOf('report'),
  templateVersion: 1,
  settingsVersion: 1,
  language: 'en',
  supersedes,
})

const seal = (pen: OrderPen): void => {
  pen.write('report.sealed', sealOf(pen), {
    by: advisor,
    deviceId: null,
    given: { reportNumber: 'R-2602-1' },
  })
}
