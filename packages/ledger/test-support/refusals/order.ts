import { definitionOf } from '../../src/registry.ts'
import { asLead, comebackUntil, ownWork } from '../comeback.ts'
import {
  arrivalOf,
  decide,
  estimateOf,
  findingsOf,
  oneSensorJob,
  opening,
  workUntil,
} from '../one-sensor-job.ts'
import { orderPen } from '../order-pen.ts'
import { idOf, wordsOf } from '../seeded-ids.ts'
import { gauge, linkId, technician } from '../shop.ts'
import { bay, closeStep, desk, lastOf, note, type Refusals, strikeOf } from './setting.ts'

export const orderRefusals: Refusals<
  | 'ENTRY_ID_REUSED'
  | 'ENTRY_RESTS_ON_REFUSED'
  | 'ENTRY_RESTS_ON_UNKNOWN'
  | 'ENTRY_KIND_NOT_ALLOWED'
  | 'ROLE_NOT_ALLOWED'
  | 'ORDER_NOT_OPENED'
  | 'ORDER_ALREADY_OPENED'
  | 'COMEBACK_OF_ANOTHER_VEHICLE'
  | 'COMEBACK_NOT_JUDGED'
  | 'VEHICLE_OF_ANOTHER_CUSTOMER'
  | 'ASSIGNEE_UNKNOWN'
  | 'ORDER_ENDED'
  | 'ORDER_SEALED'
  | 'AUTHORITY_MISSING'
  | 'READING_IMPOSSIBLE'
  | 'GAUGE_UNKNOWN'
  | 'PLAN_NOT_BY_SYSTEM'
> = {
  ENTRY_ID_REUSED: [
    [
      'an id that the order already holds',
      () => {
        const pen = oneSensorJob('written-up')
        return pen.attempt('note.added', note, { ...desk, id: lastOf(pen, 'order.opened') })
      },
    ],
  ],
  ENTRY_RESTS_ON_REFUSED: [
    [
      'an entry that rests on a refused one',
      () =>
        oneSensorJob('written-up').attempt('note.added', note, {
          ...desk,
          restsOn: [idOf('refused')],
          facts: { refusedIds: new Set([idOf('refused')]) },
        }),
      { entryId: idOf('refused') },
    ],
  ],
  ENTRY_RESTS_ON_UNKNOWN: [
    [
      'an entry that rests on one that never came',
      () => oneSensorJob('written-up').attempt('note.added', note, { ...desk, restsOn: [idOf('nowhere')] }),
      { entryId: idOf('nowhere') },
    ],
  ],
  ENTRY_KIND_NOT_ALLOWED: [
    [
      'a customer who writes a reading',
      () => oneSensorJob('written-up').attempt('wheel.checked', arrivalOf('LF'), { by: { linkId } }),
      { why: 'author', kind: 'wheel.checked', author: 'customer' },
    ],
  ],
  ROLE_NOT_ALLOWED: [
    [
      'a technician who opens an order',
      () => orderPen().attempt('order.opened', opening, { by: technician, deviceId: null }),
      { roles: ['advisor', 'lead', 'manager', 'owner'] },
    ],
    [
      'an advisor who records a reading',
      () => oneSensorJob('written-up').attempt('wheel.checked', arrivalOf('LF'), desk),
      { roles: ['technician', 'lead'] },
    ],
    [
      'a person who no longer works here',
      () => oneSensorJob('written-up').attempt('note.added', note, { ...desk, facts: { staff: new Map() } }),
      { roles: ['advisor', 'technician', 'lead', 'manager', 'owner'] },
    ],
  ],
  ORDER_NOT_OPENED: [
    ['a first entry that opens nothing', () => orderPen().attempt('note.added', note, desk)],
  ],
  ORDER_ALREADY_OPENED: [
    ['an order opened twice', () => oneSensorJob('written-up').attempt('order.opened', opening, desk)],
  ],
  VEHICLE_OF_ANOTHER_CUSTOMER: [
    [
      'an order for a vehicle that another customer owns',
      () => orderPen().attempt('order.opened', opening, { ...desk, facts: { vehicleIsOfCustomer: false } }),
    ],
  ],
  ASSIGNEE_UNKNOWN: [
    [
      'an order that is given to somebody who does not work here',
      () =>
        oneSensorJob('written-up').attempt('order.assigned', { staffId: idOf('nobody'), bay: null }, desk),
    ],
  ],
  COMEBACK_OF_ANOTHER_VEHICLE: [
    [
      'a comeback of an order that is of another vehicle',
      () => orderPen().attempt('order.opened', opening, { ...desk, facts: { comebackIsOfVehicle: false } }),
    ],
  ],
  COMEBACK_NOT_JUDGED: [
    [
      'a cause on an order that is joined to none',
      () => oneSensorJob('confirmed').attempt('comeback.judged', ownWork, asLead),
      { why: 'no-comeback' },
    ],
    [
      'a cause before anybody confirmed findings',
      () => comebackUntil('checked').attempt('comeback.judged', ownWork, asLead),
      { why: 'findings-unconfirmed' },
    ],
    [
      'another cause without words',
      () =>
        comebackUntil('confirmed').attempt(
          'comeback.judged',
          { cause: 'something-else', words: null },
          asLead,
        ),
      { why: 'words-missing' },
    ],
    [
      'an estimate before the cause',
      () => {
        const pen = comebackUntil('confirmed')
        return pen.attempt('estimate.issued', estimateOf(pen), desk)
      },
      { why: 'cause-missing' },
    ],
  ],
  ORDER_ENDED: [
    ['a note after the keys are back', () => oneSensorJob('handed-back').attempt('note.added', note, desk)],
    [
      'a note after the customer withdrew',
      () => {
        const pen = oneSensorJob('written-up')
        pen.write('order.withdrawn', { reason: 'customer', words: wordsOf('why') }, desk)
        return pen.attempt('note.added', note, desk)
      },
    ],
  ],
  ORDER_SEALED: [
    ['a reading after the seal', () => oneSensorJob('sealed').attempt('wheel.checked', arrivalOf('LF'), bay)],
    [
      'a withdrawal after the seal',
      () => {
        const pen = oneSensorJob('sealed')
        return pen.attempt('entry.struck', strikeOf(lastOf(pen, 'wheel.checked')), bay)
      },
    ],
  ],
  AUTHORITY_MISSING: [
    [
      'a gauge put on before the customer agreed to a look',
      () => {
        const pen = orderPen()
        pen.write('order.opened', opening, desk)
        return pen.attempt('wheel.checked', arrivalOf('LF'), bay)
      },
      { to: 'look' },
    ],
    [
      'a drive that the customer did not agree to',
      () => {
        const pen = oneSensorJob('decided', 'no-drive')
        const without = orderPen('look-only')
        for (const entry of pen.entries()) {
          if (entry.kind === 'authority.given')
            without.write('authority.given', { ...entry.payload, to: ['look'] }, desk)
          else if (entry.kind === 'diagnosis.issued')
            without.write('diagnosis.issued', findingsOf(without), bay)
          else if (entry.kind === 'diagnosis.confirmed')
            without.write(
              'diagnosis.confirmed',
              { ...entry.payload, diagnosisId: lastOf(without, 'diagnosis.issued') },
              bay,
            )
          else if (entry.kind === 'estimate.issued')
            without.write('estimate.issued', estimateOf(without), desk)
          else if (entry.kind === 'estimate.decided') decide(without, 'authorized')
          else if (entry.kind !== 'plan.issued')
            without.write(
              entry.kind,
              entry.payload as never,
              definitionOf(entry.kind).roles.includes('technician') ? bay : desk,
            )
        }
        workUntil(without, (key) => key === 'vehicle.proof.drive')
        return closeStep(without, 'vehicle.proof.drive')
      },
      { to: 'drive' },
    ],
  ],
  READING_IMPOSSIBLE: [
    [
      'a pressure that no gauge shows',
      () =>
        oneSensorJob('written-up').attempt(
          'wheel.checked',
          arrivalOf('LF', { gauge: { pressure: { value: 30, unit: 'bar' }, instrument: gauge } }),
          bay,
        ),
      { wheel: 'LF', found: { value: 30, unit: 'bar' }, lowestPsi: -20, highestPsi: 150 },
    ],
  ],
  GAUGE_UNKNOWN: [
    [
      'a reading with a gauge that is not registered',
      () =>
        oneSensorJob('written-up').attempt('wheel.checked', arrivalOf('LF'), {
          ...bay,
          facts: { gauges: new Set() },
        }),
      { gauge: 'GA-1' },
    ],
  ],
  PLAN_NOT_BY_SYSTEM: [
    [
      'a plan written by hand',
      () => {
        const pen = oneSensorJob('decided')
        return pen.attempt('plan.issued', { plan: { planVersion: 2, steps: [] }, decisionId: null }, bay)
      },
    ],
  ],
}
