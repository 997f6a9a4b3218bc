import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'
import type { BundleNamed } from '@bayledger/ledger/questions/named'
import type { Role } from '@bayledger/ledger/role'
import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { settledBy } from '@bayledger/reckoning/diagnosis/settlement'
import type { SafetyFigure } from '@bayledger/reckoning/sheet'
import type { StepNamed } from '@bayledger/reckoning/step'
import { bundleTitle } from '../bundles.ts'
import { gateWords } from '../gates.ts'
import type { RefusalsWording } from '../refusals.ts'
import { stepDoes } from '../steps.ts'
import { balanceUnclear } from './balance-unclear.ts'
import { bundles } from './bundles.ts'
import { comebacksNotJudged, unclearCovers } from './comeback-refusals.ts'
import { findingActions } from './finding-actions.ts'
import { findingTitles } from './finding-titles.ts'
import { gates } from './gates.ts'
import { odometerImplausible } from './odometer-implausible.ts'
import { partRefusals } from './part-refusals.ts'
import { pressureTargets } from './pressure-targets.ts'
import { repairDoubts } from './repair-doubts.ts'
import { reportMoney } from './report/money.ts'
import { stillAllowed, tiresRefuse } from './rotation-refusals.ts'
import { steps } from './steps.ts'
import { parkedWords } from './troubles.ts'
import { wheels } from './wheels.ts'

/** Who opens work that a finding holds, where one act does it. */
const settlementWords = (finding: FindingCode): string => {
  switch (settledBy[finding]) {
    case 'told':
      return 'The desk tells the customer and notes it; then it goes on. '
    case 'inside-sound':
      return 'It goes on when the tire was looked at inside and is sound. '
    case 'label-confirmed':
      return "It goes on when the door label's figures are confirmed. "
    default:
      return ''
  }
}

const named = (step: StepNamed): string =>
  `${stepDoes(steps, step)}${step.wheel === null ? '' : `, ${wheels.names[step.wheel]}`}`

const dollars = (cents: number): string =>
  (cents / 100).toLocaleString('en-US', { style: 'currency', currency: 'USD' })

const titleOf = (bundle: BundleNamed): string => bundleTitle({ bundles, wheels }, bundle)

const roles: Readonly<Record<Role, string>> = {
  advisor: 'an advisor',
  technician: 'a technician',
  lead: 'a lead',
  manager: 'a manager',
  owner: 'the owner',
}

/** "an advisor, a manager or the owner" */
const oneOf = (allowed: readonly Role[]): string => {
  const names = allowed.map((role) => roles[role])
  const last = names.pop() ?? ''
  return names.length === 0 ? last : `${names.join(', ')} or ${last}`
}

const authors = { staff: 'the staff', customer: 'a customer', system: 'the system' } as const

const figures: Readonly<Record<SafetyFigure, string>> = {
  placard: 'pressure of the door label',
  studTorque: 'torque',
  frequency: "sensor's frequency",
}

const listed = (words: readonly string[]): string => new Intl.ListFormat('en-US').format(words)

const spareDoubts: Readonly<Record<RefusalValues['SPARE_NOT_SOUND']['why'], string>> = {
  none: 'it has none',
  'not-checked': 'the spare is not gauged and looked at yet',
  damaged: 'the spare is damaged or worn out',
  'no-help': 'another wheel does not remove this danger',
  'one-spare': 'it has one spare, and more than one wheel must not be used',
}

const contradictedHoles: Readonly<
  Record<RefusalValues['PUNCTURE_CONTRADICTED']['why'], (wheel: string) => string>
> = {
  'no-damage': (wheel) =>
    `A hole in the ${wheel} tire is recorded, and beside it damage without a puncture. Add the puncture, or take the hole out.`,
  'no-hole': (wheel) =>
    `A puncture of the ${wheel} tire is recorded, and beside it that the tire has no hole. Record the hole, or take the puncture out.`,
  alone: (wheel) =>
    `The only hole of the ${wheel} tire has a distance to another one. Record the other hole, or take the distance out.`,
  touching: (wheel) =>
    `Two holes of the ${wheel} tire run into one another, so their repair units overlap. Measure the distance again.`,
}

export const refusals: RefusalsWording = {
  ENTRY_ID_REUSED: () =>
    'Another entry already has this id, with other content. Write this one again; both will be kept.',
  ENTRY_RESTS_ON_REFUSED: () => 'This builds on an entry that was refused. Settle that one first.',
  ENTRY_RESTS_ON_UNKNOWN: () => 'This builds on an entry that this order does not have. Send that one first.',
  ENTRY_KIND_NOT_ALLOWED: (values) => {
    switch (values.why) {
      case 'author':
        return `This cannot be written by ${authors[values.author]}.`
      case 'sealed-by-the-server':
        return 'Seal the report from the order page; the server composes it and writes this entry itself.'
      case 'link-is-the-customers':
        return 'Only the customer answers by the link. Record what they say here, or by telephone.'
      case 'written-at-the-desk':
        return 'Orders, money and consent are written at the desk. Ask an advisor there.'
    }
  },
  ROLE_NOT_ALLOWED: ({ roles: allowed }) => `This must be recorded by ${oneOf(allowed)}. Ask one of them.`,
  REFUND_NOT_ALLOWED: ({ roles: allowed }) =>
    `A refund must be recorded by ${oneOf(allowed)}. Ask one of them to record it.`,
  REFUND_UNCLEAR: () =>
    'Money that is given back needs a reason, and a payment has none. Use "Give money back" at the order’s payments.',
  REFUND_OVER_PAID: ({ method, leftCents }) =>
    leftCents <= 0
      ? `Nothing is left that was paid by ${reportMoney.methods[method]}. Give the money back the way it was paid.`
      : `At most ${dollars(leftCents)} can be given back by ${reportMoney.methods[method]}: that much was paid this way and not yet given back.`,
  ORDER_NOT_OPENED: () => 'This order has not been opened. Open it at the desk first.',
  ORDER_ALREADY_OPENED: () => 'This order is already open. Write the next entry to it.',
  ORDER_PARTS_UNKNOWN: ({ part }) =>
    `The ${part === 'location' ? 'place' : part} of this order is not in this shop's records. Choose it again at the desk.`,
  ORDER_ENDED: () => 'This order has ended. Open a new one and join it to this one as a comeback.',
  ORDER_SEALED: () =>
    'The report is sealed; after it there are only the hand-back and addenda. Open a new order for what is left.',
  STEP_NOT_PLANNED: () => 'The job plan has no such step. Open the order again and take its next step.',
  STEP_OF_OTHER_KIND: ({ why, step }) =>
    why === 'other-moment'
      ? `The step "${named(step)}" records the vehicle after the work began. Record what was seen on arrival outside the plan.`
      : `The step "${named(step)}" is closed by another record than this one. Open the step and close it there.`,
  STEP_ALREADY_CLOSED: ({ step }) =>
    `The step "${named(step)}" is already closed. Withdraw that entry first if it was wrong.`,
  STEP_OUT_OF_ORDER: (values) =>
    values.why === 'no-sheet'
      ? 'Choose the specification sheet first; the figure comes from it.'
      : `First: ${values.first === null ? 'the step before this one' : named(values.first)}. Then this step.`,
  STEP_NOT_AUTHORIZED: ({ step }) =>
    `The customer has not authorized "${named(step)}". Ask at the desk before any work.`,
  STEP_ON_OTHER_WHEEL: ({ why, wheel, found }) =>
    why === 'other-wheel'
      ? `This step is for the ${wheels.names[wheel]} wheel. Record it there.`
      : `The rotation brings the wheel marked ${wheel} here, not ${found === null ? 'another one' : `the one marked ${found}`}. Look at the mark on the tire.`,
  STEP_VALUE_MISSING: ({ step }) =>
    `The step "${named(step)}" records a value. Write down what you saw, or that it could not be checked and why.`,
  SHEET_NOT_ON_FILE: () =>
    'The specification sheet differs from the one on file. Load the page again and choose the sheet again.',
  STEP_NOT_SET_ASIDE: ({ step }) =>
    step.code === 'check-tires-for-rotation'
      ? 'No wheel goes to another place before somebody has seen that its tire may. If the tires do not allow it, tell the desk.'
      : `The step "${named(step)}" cannot be set aside: a tire that is opened is looked at. If it stays closed, set aside its opening.`,
  FIGURE_MISSING: ({ figure }) =>
    `Nobody has entered the ${figures[figure]} of this kind of vehicle yet. Enter it from its source, then a second person confirms it.`,
  FIGURE_UNVERIFIED: ({ figure }) =>
    `The ${figures[figure]} on this sheet is not verified. A second person confirms it from the maker's source first.`,
  FIGURE_CONFIRMED_BY_WRITER: ({ figure }) =>
    `You entered the ${figures[figure]} yourself. Another person confirms it from the source.`,
  ARRIVAL_INCOMPLETE: ({ before, reason }) =>
    `${before === 'findings' ? 'The arrival check is not complete.' : 'No wheel comes off before the arrival check is complete.'} ${gateWords(gates, reason)}`,
  AUTHORITY_MISSING: ({ to }) =>
    `The customer has not agreed to a ${to} yet. Record the consent at the desk first.`,
  READING_IMPOSSIBLE: ({ wheel, found, lowestPsi, highestPsi }) =>
    `${found.value} ${found.unit} cannot be a tire's pressure. Read the ${wheels.names[wheel]} tire again and type what it shows (${lowestPsi} to ${highestPsi} psi).`,
  GAUGE_UNKNOWN: ({ gauge }) =>
    `The gauge ${gauge} is not in the shop's register or is quarantined. Take another gauge and read again.`,
  DIAGNOSIS_DIFFERS: () =>
    'The readings have changed since these findings were computed. Compute them again.',
  DIAGNOSIS_NOT_CURRENT: () =>
    'Newer readings have changed the findings. Look at the current ones and confirm those.',
  STOP_NOT_FOUND: ({ stops }) =>
    stops
      ? 'This names a finding that does not stop the vehicle now. Look at the present findings again.'
      : 'This names a finding that is not among the present ones. Look at the findings again.',
  ESTIMATE_REVISION_STALE: ({ to, newest }) => {
    if (to === 'issue')
      return `The next version of this estimate is ${newest + 1}. Open the order again and build from there.`
    return to === 'show'
      ? 'A newer version of this estimate exists. Show that one.'
      : 'A newer version of this estimate exists. Read that one and answer it.'
  },
  ESTIMATE_DIGEST_DIFFERS: ({ to }) =>
    to === 'issue'
      ? 'The estimate was changed on its way here. Build it again.'
      : 'What was answered is not what this shop issued. Open the estimate again and answer it.',
  ESTIMATE_TOTALS_DIFFER: () => 'The totals are not the sums of the lines. Build the estimate again.',
  DISCOUNT_OVER_LIMIT: ({ bundle, limitPercentThousandths }) =>
    limitPercentThousandths === 0
      ? `Your role may not take anything off "${titleOf(bundle)}". Issue it without the discount, or ask someone who may give it.`
      : `You may take ${limitPercentThousandths / 1_000} % off "${titleOf(bundle)}" at most. Take a smaller discount, or ask someone who may give more.`,
  ESTIMATE_COVER_UNCLEAR: ({ bundle, why }) => unclearCovers[why](titleOf(bundle)),
  ESTIMATE_FINDINGS_UNCONFIRMED: () =>
    'An estimate follows confirmed findings. Let the technician confirm the present ones first.',
  ESTIMATE_SENSOR_FORBIDDEN: () =>
    'This vehicle has no sensors in its wheels. Take the sensor off the estimate.',
  ESTIMATE_SENSOR_SILENCED: ({ wheels: silenced }) =>
    `A plain stem would silence a sensor that is not known to be dead: ${silenced.map((wheel) => wheels.names[wheel]).join(', ')}. Trigger it twice, name the stem of its sensor on the vehicle's sheet, or decline the work.`,
  ESTIMATE_BUNDLES_UNCLEAR: () =>
    'Two parts of this estimate have one key, or one replaces a part that is not there. Build it again.',
  ESTIMATE_SAFETY_DROPPED: ({ bundle }) =>
    `"${titleOf(bundle)}" concerns safety and was offered before. Keep it in the new version: the customer answers it.`,
  BUNDLE_UNKNOWN: () =>
    'One of these answers names a line that this estimate does not have, or answers a line twice. Open the estimate again.',
  BUNDLE_ALREADY_DECIDED: ({ bundle, why }) => {
    switch (why) {
      case 'agreed-before':
        return `"${titleOf(bundle)}" was agreed to before the inspection. Leave it out of the answers.`
      case 'declined':
        return `"${titleOf(bundle)}" is answered with No. Only a Yes can replace that, given to the shop at the desk or by telephone.`
      default:
        return `"${titleOf(bundle)}" is already answered. Only what was put off or declined can be answered again, or a Yes taken back with a No.`
    }
  },
  BUNDLE_WORK_BEGAN: (values) => {
    const work = `The Yes to "${titleOf(values.bundle)}" cannot be taken back`
    switch (values.why) {
      case 'step':
        return `${work}: ${named(values.step)} is done. If it was not done, withdraw its entry in the history first. If it was, speak with the customer: a new version of the estimate can end the work at another price.`
      case 'not-right':
        return `${work}: the bay found something that is not right at ${named(values.step)}. Decide that with the customer first.`
      case 'lifted':
        return `${work} while the vehicle is lifted. If no wheel came off, have the bay lower it and withdraw the lift in the history, then record the No.`
    }
  },
  BUNDLE_ALTERNATIVES_BOTH: ({ bundle }) =>
    `"${titleOf(bundle)}" replaces another line. Say Yes to one of the two.`,
  CAUTION_NOT_SHOWN: ({ bundle }) =>
    `"${titleOf(bundle)}" concerns safety. Show its caution before a No or Not today is recorded.`,
  MONEY_MISSING: () =>
    'The prices of this entry did not come with it, or cannot be read. Load the page again and send both together.',
  SHOWN_MISSING: () =>
    'What the customer was shown did not come with the answers. Load the page again and record the answers there.',
  CONSENT_NOT_WRITERS: () =>
    'Only the link itself writes a consent by link; the staff writes one given at the desk or by telephone. Record how it was given.',
  CHECK_UNKNOWN: ({ field }) => `No check is called “${field}”. Skip one of those that the findings list.`,
  TROUBLE_WITHOUT_WHEEL: () => 'Say at which wheel it is.',
  WHEEL_PARKED: ({ wheel, ...parked }) => parkedWords(wheel, parked),
  PUNCTURE_IMPOSSIBLE: ({ wheel, millimeters, mostMillimeters }) =>
    `A hole of ${millimeters} mm in the ${wheels.names[wheel]} tire is no puncture; at most ${mostMillimeters} mm can be typed. Measure it again, or record a cut.`,
  PUNCTURE_CONTRADICTED: ({ wheel, why }) => contradictedHoles[why](wheels.names[wheel]),
  TIRE_SIZE_UNREAD: ({ wheel, found }) =>
    `"${found}" is not a tire size. Read the ${wheels.names[wheel]} tire again and type the size alone, as 215/60R16 95H, or record why it cannot be read.`,
  TIRE_DATE_UNREAD: ({ wheel, found }) =>
    `"${found}" is neither the date code of a tire nor its whole number. Read the ${wheels.names[wheel]} tire again: the last four digits after DOT are week and year. Or record why it cannot be read.`,
  REPAIR_NOT_JUDGED: ({ wheel, because }) =>
    `Whether the ${wheels.names[wheel]} tire may be repaired is not decided yet. Record first: ${listed(because.map((one) => repairDoubts[one].look))}.`,
  PUNCTURE_NOT_REPAIRABLE: ({ wheel, because }) =>
    `The ${wheels.names[wheel]} tire must not be repaired: ${listed(because.map((one) => repairDoubts[one].why))}. It needs another tire.`,
  SPARE_NOT_SOUND: ({ why }) => `The vehicle cannot leave on its spare: ${spareDoubts[why]}. Have it towed.`,
  WHEEL_NOT_OFF: ({ wheel }) =>
    `The ${wheels.names[wheel]} wheel was not recorded as off. Record that first.`,
  WHEEL_ALREADY_OFF: ({ wheel }) =>
    `The ${wheels.names[wheel]} wheel is already off. Take the next step of the plan.`,
  WHEEL_HELD_BY_FINDING: ({ wheel, finding }) =>
    `Keep ${wheel === null ? 'this wheel' : `the ${wheels.names[wheel]} wheel`} on until this is settled: ${findingTitles[finding]}. ${findingActions[finding]}`,
  WHEEL_NOT_TORQUED: ({ why, wheel }) => {
    if (why === 'not-torqued')
      return `The ${wheels.names[wheel]} wheel is not torqued yet. Torque it before the second check.`
    return why === 'off'
      ? `The ${wheels.names[wheel]} wheel is off. Fit it before torquing it.`
      : `The ${wheels.names[wheel]} wheel is off. Put it on, every fastener started by hand, before the vehicle is lowered.`
  },
  WHEEL_NOT_SECURED: ({ wheel }) =>
    `The ${wheels.names[wheel]} wheel is off, untorqued or unchecked. Put it on, torque it and let a second person check it first.`,
  WORK_HELD_BY_FINDING: ({ finding }) =>
    `Not yet: ${findingTitles[finding]}. ${settlementWords(finding)}${findingActions[finding]}`,
  SENSOR_BROKEN_OPEN: ({ wheel }) =>
    `The working ${wheels.names[wheel]} sensor was broken in our hands. Fit another one first; the vehicle stays until then.`,
  SENSOR_FREQUENCY_WRONG: ({ foundMHz, wantedMHz }) =>
    `This sensor sends on ${foundMHz} MHz; the vehicle listens to ${wantedMHz} MHz. Take the right sensor.`,
  SENSOR_ID_TAKEN: ({ wheel }) =>
    wheel === null
      ? "A sensor on another vehicle of this shop's records has this ID. Program another one."
      : `The ${wheels.names[wheel]} sensor already has this ID. Program another one.`,
  SENSOR_ID_DIFFERS: ({ programmed, found }) =>
    `The sensor programmed for this wheel ends in ${programmed}; this one ends in ${found}. Read the sensor in your hand again.`,
  PART_DOES_NOT_MATCH: ({ refusals: against }) =>
    `${against.map(partRefusals).join(' ')} Take the right part.`,
  TORQUE_DIFFERS_FROM_SHEET: ({ sheet, found }) =>
    `By the sheet this round is at ${sheet.value} ${sheet.unit}; ${found.value} ${found.unit} was recorded. Set the wrench to the sheet's figure and do the round again.`,
  TORQUE_ROUND_INCOMPLETE: (values) => {
    switch (values.why) {
      case 'count':
        return `The sheet says ${values.count} ${values.fastener}s a wheel; ${values.found} were recorded. Do the round again.`
      case 'clicks':
        return `${values.clicked} of ${values.total} clicked. Every one must click before the round is sealed.`
      case 'moved':
        return `Name each ${values.fastener} that moved once, between 1 and ${values.total}.`
    }
  },
  WRENCH_OVERDUE: (values) =>
    values.why === 'day'
      ? `The wrench ${values.wrench} was due for calibration on ${values.dueOn}. Take another one.`
      : `The wrench ${values.wrench} has ${values.cycles} clicks; it is due at ${values.dueAt}. Take another one.`,
  WRENCH_OUT_OF_RANGE: ({ wrench, found, low, high, unit }) =>
    `${found.value} ${found.unit} is outside what ${wrench} is good for (${low} to ${high} ${unit}). Take another wrench.`,
  WRENCH_UNKNOWN: ({ wrench }) => `The wrench ${wrench} is not in the shop's register. Take one that is.`,
  SECOND_PERSON_IS_DOER: ({ to }) =>
    to === 'check-torque'
      ? 'Whoever torqued this wheel cannot check it. Another person goes round and seals it with their PIN.'
      : 'The second person must be somebody else.',
  SECOND_PERSON_UNKNOWN: () =>
    "The second person is not among this shop's people. Choose somebody who works here.",
  SECOND_PERSON_ROLE_NOT_ALLOWED: ({ roles: allowed }) =>
    `The second person for this is ${oneOf(allowed)}. Choose one of them.`,
  SECOND_PERSON_UNPROVEN: () =>
    'This needs the PIN of the person who confirms it. It was not typed, or the entry was changed or the confirmation has expired. Let them type their PIN again.',
  SOLE_WORKER_TOO_SOON: ({ minutes }) =>
    `You torqued this wheel and nobody else here can check it. Wait ${minutes} minutes after the last round, then check it yourself.`,
  PRESSURE_TARGET_DIFFERS: (values) => {
    switch (values.why) {
      case 'changed':
        return 'The target was computed from other temperatures or another label. Open the step again; it shows the present target.'
      case 'no-figure':
      case 'label-over-sidewall':
        return pressureTargets.refused(values)
    }
  },
  PRESSURE_OVER_SIDEWALL: ({ wheel, found, maximumPsi }) =>
    `${found.value} ${found.unit} is over the ${maximumPsi} psi that the sidewall of the ${wheels.names[wheel]} tire allows. Let air out until it is under that, and gauge again.`,
  PRESSURE_NOT_ON_TARGET: ({ side, found, targetPsi, overPsi }) =>
    `${found.value} ${found.unit} is ${side} the target of ${targetPsi.toFixed(1)} psi. Set it to the target, at most ${overPsi} psi above, and read again.`,
  ROAD_GATE_CLOSED: ({ reason }) => `The vehicle may not move on the road. ${gateWords(gates, reason)}`,
  DRIVE_LONGER_THAN_ORDER: ({ minutes, orderMinutes }) =>
    `A drive of ${minutes} minutes is longer than this order is open: ${orderMinutes} minutes. Type the minutes of this drive again.`,
  BALANCE_UNCLEAR: balanceUnclear,
  ROTATION_NOT_ALLOWED: (values) =>
    values.why === 'in-words'
      ? 'Before a rotation it is recorded which tires have an arrow and which are of another size. Record it again.'
      : `The tires do not allow this rotation. ${tiresRefuse(values.refusals)} ${stillAllowed(values.allowed)} Move no wheel; tell the desk.`,
  ODOMETER_BACKWARDS: () =>
    'The odometer reads less after the drive than before it, or in another unit. Read both again.',
  VEHICLE_OF_ANOTHER_CUSTOMER: () =>
    'The vehicle is another customer’s. If it has a new owner, choose the owner on the vehicle’s page first; then open the order.',
  ASSIGNEE_UNKNOWN: () =>
    'Nobody who works here has this name. They may have left. Choose somebody from the list.',
  COMEBACK_OF_ANOTHER_VEHICLE: () =>
    'The earlier order is not of this vehicle. Open the order from the page of the vehicle that came back, or without the earlier one.',
  COMEBACK_NOT_JUDGED: ({ why }) => comebacksNotJudged[why],
  ODOMETER_IMPLAUSIBLE: odometerImplausible,
  PAYMENT_UNKNOWN: () =>
    'This order has no such payment, or it was corrected since. Load the order again and correct what it shows.',
  PAYMENT_CHANGES_NOTHING: () => 'The payment already says this. Change its amount or how it was paid.',
  PHOTO_TOO_LARGE: ({ bytes }) =>
    `The photo has ${(bytes / 1_000_000).toFixed(1)} MB, and at most 40 MB are taken. Take it again with fewer pixels.`,
  PHOTO_UNKNOWN: () => 'This order has no such photo, or it was withdrawn. Load the order again.',
  REPORT_HEAD_MOVED: () => 'Something was written since the report was composed. Compose it again.',
  SEAL_GATE_CLOSED: ({ reason }) => `The report cannot be sealed yet. ${gateWords(gates, reason)}`,
  REPORT_NOT_SEALED: () => 'Seal the report first; the customer takes it along.',
  REPORT_SUPERSEDES_OTHER: () =>
    'An addendum names the newest report of this order, and a first report names none. Compose it again.',
  HAND_BACK_GATE_CLOSED: ({ reason }) => `The vehicle may not be handed back. ${gateWords(gates, reason)}`,
  RELEASE_NOT_AGREED: () =>
    'The repair is not proven yet. A second person agrees to the release before the keys go out.',
  HOLD_UNKNOWN: () =>
    'There is no open question about the time of this entry. Load the order again; somebody may have settled it.',
  STRIKE_TARGET_UNKNOWN: () => 'The entry to withdraw is not in this order.',
  STRIKE_NOT_ALLOWED: () =>
    'This kind of entry cannot be withdrawn: consents, seals and what the server wrote stay for good.',
  STRIKE_ALREADY_STRUCK: () => 'That entry is already withdrawn.',
  STRIKE_NOT_OWN: () => 'Only the person who wrote an entry can undo it. Withdraw it with a reason instead.',
  STRIKE_NEEDS_SECOND_PERSON: ({ to }) =>
    to === 'undo'
      ? 'A sealed torque, a second check or a wheel that came off cannot be undone. Withdraw it with a second person.'
      : 'Withdrawing this takes a second person. Let them confirm with their PIN.',
  PLAN_NOT_BY_SYSTEM: () => 'A job plan is computed from the answers; it cannot be written by hand.',
  ENTRY_INVALID: () => 'This could not be read: something in it is missing or out of bounds. Write it again.',
  TABLET_PUT_OUT: () =>
    'This was tapped on a tablet that has been put out since, so it is not in the ledger. Read it, and write it again if it holds.',
  WRITER_NOT_ACTIVE: () =>
    'Whoever wrote this no longer works here, so it is not in the ledger. Read it, and write it again if it holds.',
  SIDE_MISSING: () =>
    'The words or prices that belong to this entry did not come with it. Send both together.',
}
