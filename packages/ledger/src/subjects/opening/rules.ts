import { refuse } from '../../admit/refusal.ts'
import { refuseOdometer } from '../../admit/refuse-odometer.ts'
import type { Rules } from '../../admit/rule.ts'
import { digestOf } from '../../digests.ts'
import { lookFee } from '../../questions/money.ts'
import {
  arrivalOdometerDoubt,
  beforeArrival,
  beforeLeaving,
  odometerDoubt,
} from '../../questions/odometer.ts'
import type { openingKinds } from './kinds.ts'

export const openingRules: Rules<keyof typeof openingKinds> = {
  'order.opened': [
    (_state, _entry, { vehicleIsOfCustomer }) =>
      vehicleIsOfCustomer === false ? refuse('VEHICLE_OF_ANOTHER_CUSTOMER', {}) : null,
    // A history that is another vehicle's would enter the evidence, and its warranty the price.
    (_state, _entry, { comebackIsOfVehicle }) =>
      comebackIsOfVehicle === false ? refuse('COMEBACK_OF_ANOTHER_VEHICLE', {}) : null,
    (_state, { payload: { odometer, odometerConfirmed } }, { earlierOdometer, now }) =>
      odometer &&
      refuseOdometer(odometerDoubt(odometer, beforeArrival(earlierOdometer, now), odometerConfirmed)),
  ],
  'complaint.recorded': [],
  'authority.given': [
    (_state, { payload }, facts) =>
      lookFee(facts.money, payload.money) ? null : refuse('MONEY_MISSING', {}),
  ],
  // Who verified a figure is proven on the sheet that the shop has on file, so an order may use no other.
  'sheet.chosen': [
    (_state, { payload }, facts) =>
      facts.sheetsOnFile.has(digestOf(payload.sheet)) ? null : refuse('SHEET_NOT_ON_FILE', {}),
  ],
  'surroundings.recorded': [],
  'order.assigned': [
    (_state, { payload: { staffId } }, { staff }) =>
      staffId === null || staff.has(staffId) ? null : refuse('ASSIGNEE_UNKNOWN', {}),
  ],
  'wait.set': [],
  'stay.changed': [],
  'odometer.read': [
    (state, { payload: { when, odometer, confirmed } }, { earlierOdometer, now }) =>
      refuseOdometer(
        when === 'leaving'
          ? odometerDoubt(odometer, beforeLeaving(state, earlierOdometer, now), confirmed)
          : arrivalOdometerDoubt(state, odometer, beforeArrival(earlierOdometer, now), confirmed),
      ),
  ],
  'order.moved': [],
}
