import type { LateDoubt } from '@bayledger/ledger/hold'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheels } from './wheels.ts'

/** What the tablet had not heard of, by the code of the refusal that the entry would have met. */
const unheard: Readonly<Record<string, string>> = {
  STEP_NOT_AUTHORIZED: 'that the customer had not agreed to it',
  STEP_NOT_PLANNED: 'that the job plan had changed',
  STEP_OUT_OF_ORDER: 'that a step before it was open again',
  WHEEL_PARKED: 'that something is not right there',
  WHEEL_HELD_BY_FINDING: 'of a finding that keeps the wheel on',
  WORK_HELD_BY_FINDING: 'of a finding that forbids it',
  WHEEL_NOT_OFF: 'that the wheel was on',
  WHEEL_ALREADY_OFF: 'that the wheel was off',
  WHEEL_NOT_TORQUED: 'that the wheel was not torqued',
  ROAD_GATE_CLOSED: 'what keeps the vehicle off the road',
  AUTHORITY_MISSING: 'that the consent was withdrawn',
  TORQUE_DIFFERS_FROM_SHEET: 'that the torque figure had changed',
  PRESSURE_TARGET_DIFFERS: 'that the pressure to set had changed',
  SENSOR_ID_TAKEN: 'that another sensor has this ID',
  GAUGE_UNKNOWN: 'that the gauge is in quarantine',
  PART_DOES_NOT_MATCH: 'that the part is held back or does not fit',
  WRENCH_OVERDUE: 'that the wrench was due for calibration',
}

/** Work that two tablets recorded, or that was recorded without hearing what speaks against it. */
export const heardLate = (wheel: WheelPosition | null, { refusal }: LateDoubt): string => {
  const at = wheel === null ? '' : ` at the ${wheels.names[wheel]} wheel`
  return refusal === 'STEP_ALREADY_CLOSED'
    ? `Two tablets recorded the same step${at}, and the first record counts. Withdraw one of the two, or settle it on the order page.`
    : `Work was recorded${at} on a tablet that had not heard ${unheard[refusal] ?? 'what had changed'}. Find out how it is, then withdraw the entry or settle it on the order page.`
}
