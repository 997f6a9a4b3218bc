import { tiresOpenedAnyway } from '@bayledger/ledger/questions/authorized-works'
import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { ifStemBreaks } from '@bayledger/reckoning/money/if-stem-breaks'
import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type Doing, doSteps } from '../do-steps.ts'
import { wrenchInUse } from '../instruments.ts'
import { answerAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { takePhoto } from '../photos.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { sheets } from '../sheets.ts'
import { usualSeconds } from '../step-seconds.ts'
import { visitClock } from '../visit-clock.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** As it is printed on the sensor that replaces the one with the seized stem. */
export const t2608Sensor = '6D5B17C2'

/**
 * Pannier A: a nail in the left rear. In the bay the stem turned out to be seized, so the estimate was revised and decided again
 * by telephone. The wheel is torqued and waits for Greta.
 */
export const writeT2608 = (pen: OrderPen): void => {
  const ids = sensorSets.pannierA
  const [by, deviceId] = [people.rufus, tabletId(1)]
  writeUp(pen, {
    vehicle: 'pannier-a',
    at: ['07:15', '07:17', '07:18', '07:19'],
    by: people.devin,
    waitsHere: false,
    promisedAt: '12:30',
    odometerMiles: 118_902,
    words: 'The light is on since this morning. The van is loaded with empty buckets only.',
    reportedLight: 'solid',
    events: askedAbout(),
    consentBy: 'telephone',
    lookFee: 'waived-with-work',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.ines,
    deviceId: tabletId(4),
    from: '07:24',
    minutesDriven: null,
    lastSet: null,
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 49.8, id: ids.LF },
      { wheel: 'RF', gauge: 49.7, id: ids.RF },
      { wheel: 'RR', gauge: 71, id: ids.RR },
      {
        wheel: 'LR',
        gauge: 51.3,
        id: ids.LR,
        tireDamage: ['puncture'],
        punctures: [{ place: 'crown', millimeters: null, degrees: null, overlapsRepair: null }],
      },
    ],
    spare: { gauge: 68.9, id: null },
    frequencyMHz: 433.92,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 8, sensorAgeMonths: 64 },
    stored: ids,
    codes: [],
  })
  takePhoto(
    pen,
    { photo: 'nail', subject: 'damage', wheel: 'LR' },
    { at: '07:33', by: people.ines, deviceId: tabletId(4) },
  )
  const first = confirmFindings(pen, {
    by: people.ines,
    deviceId: tabletId(4),
    issuedAt: '07:36',
    confirmedAt: '07:38',
  })
  pen.write(
    'stop.told',
    {
      diagnosisId: first.id,
      codes: ['run-low-damage-possible'],
      channel: 'telephone',
      answer: pen.personal('It stays with you until it is done.'),
    },
    { at: '07:46', by: people.devin },
  )
  const stem = ifStemBreaks(firstPrices, sheets.pannier, [
    { works: [{ kind: 'service-stem', wheel: 'LR', valve: 'clamp-in' }] },
  ])
  issueEstimate(pen, {
    at: '07:50',
    by: people.devin,
    readyAt: '12:30',
    look: 'waived-with-work',
    added: stem === null ? [] : [stem],
  })
  answerAll(
    pen,
    { by: people.devin, shownAt: '08:02', decidedAt: '08:06', channel: 'telephone' },
    ({ bundleKey, cautions, title }) => ({
      bundleKey,
      answer: title === 'if-stem-breaks' ? 'declined' : 'authorized',
      deferredUntil: null,
      cautionsShown: title === 'if-stem-breaks' ? cautions : [],
    }),
  )
  pen.write('order.assigned', { staffId: by.id, bay: 1 }, { at: '10:31', by: people.devin })
  const clock = visitClock((10 * 60 + 33) * 60)
  const doing: Omit<Doing, 'goesOn' | 'secondsOf'> = {
    by,
    deviceId,
    second: people.greta,
    surroundings: { outdoor: midMorning.outdoor, overnightLow: midMorning.overnightLow, tire: 60 },
    sensors: { ids: { ...ids, LR: t2608Sensor }, frequencyMHz: 433.92 },
    parts: {
      LR: {
        id: t2608Sensor,
        partNumber: 'TS-433-C',
        lot: 'L2291',
        madeMonth: pen.calendar.inMonth('2025-06'),
      },
    },
    wrench: wrenchInUse(pen.calendar, { cyclesBefore: 1_350, clicksARound: 6 }),
    odometerMiles: 118_902,
    pass: clock.pass,
    inside: () => ({
      inside: 'sound',
      punctures: [{ place: 'crown', millimeters: 4.8, degrees: 10, overlapsRepair: false }],
    }),
  }
  doSteps(pen, {
    ...doing,
    secondsOf: usualSeconds,
    goesOn: ({ code }) => code !== 'look-inside',
  })
  pen.write(
    'trouble.found',
    {
      stepKey: 'LR.stem.renew',
      wheel: 'LR',
      what: 'seized',
      words: pen.personal('The nut is corroded to the stem. It will break if I go on.'),
    },
    { at: clock.pass(60), by, deviceId },
  )
  confirmFindings(pen, { by, deviceId, issuedAt: clock.pass(20), confirmedAt: clock.pass(40) })
  issueEstimate(pen, {
    at: '11:10',
    by: people.devin,
    readyAt: '13:00',
    look: 'waived-with-work',
    added: [
      askedBundle(
        { kind: 'sensors', wheels: ['LR'] },
        firstPrices,
        sheets.pannier,
        tiresOpenedAnyway(pen.state()),
      ),
    ],
  })
  answerAll(
    pen,
    { by: people.devin, shownAt: '11:18', decidedAt: '11:21', channel: 'telephone' },
    ({ bundleKey }) => ({ bundleKey, answer: 'authorized', deferredUntil: null, cautionsShown: [] }),
  )
  const inHaste = visitClock((11 * 60 + 21) * 60 + 10)
  doSteps(pen, {
    ...doing,
    pass: inHaste.pass,
    secondsOf: (step) => usualSeconds(step) / 2.1,
    goesOn: ({ closedBy, round }) => closedBy !== 'studs.torqued' || round !== 'again',
  })
}
