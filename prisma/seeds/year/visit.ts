import { unansweredBundles } from '@bayledger/ledger/questions/answers'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import { estimateIsMissing } from '@bayledger/ledger/questions/estimate-is-missing'
import { readySteps, wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { owedCents } from '@bayledger/ledger/questions/money'
import { openTroubles } from '@bayledger/ledger/questions/troubles'
import type { WrenchUsed } from '@bayledger/ledger/subjects/torque/kinds'
import { customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { handBundle } from '@bayledger/reckoning/money/hand-bundles'
import { sensorOf } from '@bayledger/reckoning/sheet'
import type { RoadPosition, WheelPosition } from '@bayledger/reckoning/wheels'
import { arrivalCheck } from '../demo/arrival-check.ts'
import { confirmFindings } from '../demo/confirm-findings.ts'
import { doSteps, type FittedPart } from '../demo/do-steps.ts'
import { type DemoEnd, endOf } from '../demo/hand-back.ts'
import { answerAll, issueEstimate } from '../demo/issue-estimate.ts'
import type { OrderPen } from '../demo/order-pen.ts'
import { type DemoPerson, people } from '../demo/people.ts'
import { tabletId } from '../demo/places.ts'
import { usualSeconds } from '../demo/step-seconds.ts'
import { visitClock } from '../demo/visit-clock.ts'
import { askedAbout, writeUp } from '../demo/write-up.ts'
import { asReceived, neglect, type Received } from './as-received.ts'
import { type Car, milesOn, monthsBetween, newId, perWheel, treadOn } from './car.ts'
import type { Chance } from './chance.ts'
import { driveAway, idsAfter, partNumberOf } from './leaving.ts'
import type { Story } from './story.ts'
import { dayOf, outdoorAt, weatherOn } from './weather.ts'

type Visit = {
  readonly pen: OrderPen
  readonly car: Car
  readonly story: Story
  readonly day: number
  readonly chance: Chance
  readonly technician: { readonly person: DemoPerson; readonly tablet: number; readonly pace: number }
  readonly advisor: DemoPerson
  readonly wrench: () => WrenchUsed
  /** The lot of the sensors that are sold on this day. */
  readonly lot: { readonly code: string; readonly madeMonth: string }
}

/** Writes one whole visit, from the write-up to the keys, and leaves the vehicle as it drives away. */
export const writeVisit = (visit: Visit): DemoEnd => {
  const { pen, car, story, day, chance, technician, advisor } = visit
  const clock = visitClock(Math.round(chance.between(7.55, 13.5) * 3_600))
  const bay = { by: technician.person, deviceId: tabletId(technician.tablet) }
  const { sheet } = car.visitor
  const miles = milesOn(car, day)
  const look = lookOf(story, chance)
  const opened = clock.now()
  writeUp(pen, {
    vehicle: car.visitor,
    at: [
      opened,
      clock.pass(chance.between(30, 80)),
      clock.pass(chance.between(30, 90)),
      clock.pass(chance.between(5, 20)),
    ],
    by: advisor,
    waitsHere: chance.isOf(0.5),
    promisedAt: quarterAfter(opened, chance.between(2, 4.5) * 3_600),
    odometerMiles: miles,
    words: story.words,
    reportedLight: reportedOf(story),
    events: askedAbout(...story.events),
    consentBy: chance.isOf(0.6) ? 'in-person' : 'telephone',
    lookFee: look,
    ...(story.comesBack && car.last ? { comebackOf: car.last.orderId } : {}),
  })
  pen.write(
    'order.assigned',
    { staffId: technician.person.id, bay: technician.tablet },
    { at: clock.pass(chance.between(120, 600)), by: advisor },
  )
  clock.pass(chance.between(300, 2_400))
  const outdoor = outdoorAt(dayOf(day), clock.hour())
  const { overnightLow } = weatherOn(dayOf(day))
  if (story.kind === 'cold') neglect(car, day, outdoor, chance)
  const received = asReceived(car, story, day, outdoor, chance)
  const silent = story.silent.map((wheel) => ({
    class: 'no-signal' as const,
    wheel,
    text: `No signal, ${wheel}`,
  }))
  arrivalCheck(pen, {
    ...bay,
    from: () => clock.pass(chance.between(14, 30) * technician.pace),
    outdoor,
    overnightLow,
    minutesDriven: null,
    lastSet: story.kind === 'cold' || chance.isOf(0.4) ? { temperature: car.air.LF.fahrenheit } : null,
    light: received.light,
    wheels: received.wheels.map((wheel) => ({
      ...wheel,
      ...(sensorOf(sheet) === null || wheel.sensorAgeMonths !== undefined
        ? {}
        : { sensorAgeMonths: monthsBetween(car.sensorMade[wheel.wheel], day) }),
    })),
    spare: received.spare,
    frequencyMHz: sensorOf(sheet)?.frequencyMHz ?? null,
    valve: sensorOf(sheet)?.stem ?? 'plain',
    tires: {
      ageYears: Math.floor((day - car.tiresMade) / 365.25),
      madeOn: dayOf(car.tiresMade),
      treadDepth32nds: treadOn(car, miles),
      sensorAgeMonths: sensorOf(sheet) === null ? null : monthsBetween(car.sensorMade.LF, day),
    },
    stored: storedOf(received, story, car, chance),
    codes: chance.isOf(0.6) ? silent : [],
  })
  const judge = () =>
    confirmFindings(pen, {
      ...bay,
      issuedAt: clock.pass(chance.between(20, 60)),
      confirmedAt: clock.pass(chance.between(30, 150)),
    })
  const issued = judge()
  if (pen.state().opened?.comebackOf)
    pen.write(
      'comeback.judged',
      { cause: story.kind === 'lost-relearn' ? 'workmanship' : 'part-failed', words: null },
      { at: clock.pass(120), by: people.greta },
    )
  const hurry = (): string => quarterAfter(clock.now(), 2_400 + 3_000 * chance.noise(0.3))
  const added = [
    ...story.asked.map((job) => askedBundle(job, firstPrices, sheet)),
    ...(story.kind === 'outside-work' ? [straightening] : []),
  ]
  const offer = (refuses: boolean): void => {
    issueEstimate(pen, {
      at: clock.pass(chance.between(150, 700)),
      by: advisor,
      readyAt: hurry(),
      look,
      added,
    })
    const bundles = unansweredBundles(pen.state())
    const takesFour = chance.isOf(0.25)
    const taken = new Set(
      bundles
        .filter(({ alternativeTo, bundleKey }) => {
          if (refuses) return false
          if (alternativeTo !== null) return takesFour
          return !(takesFour && bundles.some((other) => other.alternativeTo === bundleKey))
        })
        .map(({ bundleKey }) => bundleKey),
    )
    if (bundles.length === 0) return
    const put = chance.isOf(0.5) ? 'declined' : 'deferred'
    answerAll(
      pen,
      {
        by: advisor,
        shownAt: clock.pass(chance.between(60, 2_400)),
        decidedAt: clock.pass(chance.between(60, 300)),
        channel: chance.isOf(0.55) ? 'in-person' : 'telephone',
        customer: car.customer,
      },
      (bundle) =>
        taken.has(bundle.bundleKey)
          ? { bundleKey: bundle.bundleKey, answer: 'authorized', deferredUntil: null, cautionsShown: [] }
          : {
              bundleKey: bundle.bundleKey,
              answer: put,
              deferredUntil: put === 'deferred' ? pen.calendar.on(dayOf(day + 180)) : null,
              cautionsShown: [...cautionsOwed(bundle, bundles, taken)],
            },
    )
  }
  const refuses = story.asked.length === 0 && chance.isOf(refusalOf(story))
  if (story.kind === 'bulge')
    pen.write(
      'stop.told',
      {
        diagnosisId: issued.id,
        codes: ['tire-unsafe'],
        channel: 'in-person',
        answer: pen.personal(refuses ? 'Not today. I drive it home.' : 'Then put a new one on.'),
      },
      { at: clock.pass(240), by: advisor },
    )
  if (added.length > 0 || estimateIsMissing(pen.state())) offer(refuses)
  if (story.kind === 'bulge' && refuses)
    pen.write(
      'refusal.recorded',
      {
        codes: ['tire-unsafe'],
        cautionShown: customerCaution('CT-04'),
        proof: {
          kind: 'refused-to-sign',
          witness: pen.agreedBy(advisor === people.devin ? people.ottoline : people.devin),
        },
        leaves: 'as-it-is',
      },
      { at: clock.pass(200), by: advisor },
    )
  if (readySteps(pen.state()).length > 0) {
    if (story.silent.length > 0 && chance.isOf(0.12)) {
      pen.write(
        'part.promised',
        { partCode: partNumberOf(car), promisedAt: pen.calendar.at(quarterAfter(clock.now(), 22 * 3_600)) },
        { at: clock.pass(300), by: advisor },
      )
      clock.nextMorning(chance.between(1_200, 5_400))
    } else clock.pass(chance.between(240, 1_500))
  }
  const parts = perWheel(
    (): FittedPart => ({
      id: newId(chance),
      partNumber: partNumberOf(car),
      lot: visit.lot.code,
      madeMonth: pen.calendar.inMonth(visit.lot.madeMonth),
    }),
  )
  const ids = idsAfter(car, story, received, pen, parts, chance)
  const tire = outdoor >= 64 ? outdoor : Math.round(outdoor + (64 - outdoor) * chance.between(0.5, 0.8))
  const proceed = () =>
    doSteps(pen, {
      ...bay,
      second: people.greta,
      surroundings: { outdoor, overnightLow: Math.min(overnightLow, outdoor), tire },
      sensors: sensorOf(sheet) === null ? null : { ids, frequencyMHz: sensorOf(sheet)?.frequencyMHz ?? 0 },
      parts,
      series: 'TL-K',
      wrench: visit.wrench,
      odometerMiles: miles,
      secondsOf: (step) =>
        step.closedBy === 'drive.done'
          ? usualSeconds(step) * chance.between(1, 1.2)
          : usualSeconds(step) * technician.pace * chance.noise(0.28),
      pass: clock.pass,
      inside: (wheel) =>
        wheel !== 'SP' && story.damage[wheel]?.includes('puncture')
          ? {
              inside: 'foreign-body',
              punctures: [
                { place: 'crown', millimeters: chance.whole(2, 5), degrees: 10, overlapsRepair: false },
              ],
            }
          : {},
      moves: (_wheel, round) => (round === 0 && chance.isOf(0.08) ? [chance.whole(1, 4)] : []),
      goesOn: () =>
        !openTroubles(pen.state()).some(({ what, waitsFor }) => what === 'hole' && waitsFor === 'answer'),
    })
  proceed()
  if (pen.state().diagnosis?.outdated || openTroubles(pen.state()).some(({ what }) => what === 'hole')) {
    judge()
    offer(false)
    proceed()
  }
  const owed = owedCents(pen.state(), pen.moneySides()) ?? 0
  if (owed > 0)
    pen.write(
      'payment.noted',
      {
        money: pen.money({ amountCents: owed }),
        back: null,
        method: chance.pick(['card', 'card', 'card', 'cash', 'check']),
      },
      { at: clock.pass(chance.between(120, 900)), by: advisor },
    )
  const off = wheelsThatCameOff(pen.state()).filter((wheel): wheel is RoadPosition => wheel !== 'SP')
  const back = pen.state().drives.at(-1)?.odometerIn.value ?? miles
  const sealedAt = clock.pass(chance.between(60, 300))
  const end = endOf(pen, {
    by: advisor,
    sealedAt,
    at: clock.pass(chance.between(90, 600)),
    odometerMiles: back,
    signedBy: chance.isOf(0.9) ? car.customer.name : null,
    releaseAgreedBy: pen.state().plan && !hasProof(pen) ? people.greta : null,
    retorqueAdvised: off.length > 0,
  })
  driveAway(car, visit, { ids, miles: back, off, tire, handBack: end.handBack.draft })
  return end
}

const straightening = handBundle({
  bundleKey: 'hand.straighten',
  kind: 'outside',
  words: 'Straighten a bent wheel',
  itemKey: 'wheel-straightening',
  quantityHundredths: 100,
  unitCents: 12_500,
  wheels: ['LF'],
  depositCents: null,
  oldPartIsHere: false,
})

const lookOf = (story: Story, chance: Chance): 'charged' | 'waived-with-work' | 'waived' => {
  if (story.asked.length > 0 || story.comesBack) return 'waived'
  return chance.isOf(0.5) ? 'charged' : 'waived-with-work'
}

const reportedOf = (story: Story) => {
  if (story.kind === 'nothing') return 'intermittent-other' as const
  if (story.asked.length > 0 || story.kind === 'bulge') return 'off' as const
  return story.silent.length > 0 ||
    story.stored ||
    Object.keys(story.frequencyMHz).length > 0 ||
    story.comesBack
    ? ('flash-then-solid' as const)
    : ('solid' as const)
}

/** Nobody says No where air is lost and the remedy is cheap. */
const airIsAt: ReadonlySet<Story['kind']> = new Set(['cold', 'nail', 'stem', 'spare'])

/** How often a customer takes none of it. */
const refusalOf = ({ kind, comesBack }: Story): number => {
  if (comesBack) return 0
  if (kind === 'bulge') return 0.35
  return airIsAt.has(kind) ? 0 : 0.12
}

/** A clock text that is a quarter of an hour, so many seconds after another or a little later. */
const quarterAfter = (clock: string, seconds: number): string => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number)
  const quarters = Math.ceil((hours * 60 + minutes + seconds / 60) / 15)
  return `${String(Math.floor(quarters / 4)).padStart(2, '0')}:${String((quarters % 4) * 15).padStart(2, '0')}`
}

const storedOf = (
  received: Received,
  story: Story,
  car: Car,
  chance: Chance,
): Partial<Record<WheelPosition, string>> => {
  if (story.kind !== 'lost-relearn') return received.stored
  const [wheel = 'LF'] = car.last?.off ?? []
  return { ...received.stored, [wheel]: newId(chance) }
}

const hasProof = (pen: OrderPen): boolean => pen.state().drives.length > 0
