import { proofDriveMinutes } from '@bayledger/ledger/questions/proof'
import type { NextStepsWording } from '../next-steps.ts'

/** No digit that was entered is dropped, up to three decimals. */
const number = (value: number, leastDecimals = 0): string =>
  value.toLocaleString('en-US', { minimumFractionDigits: leastDecimals, maximumFractionDigits: 3 })

/** Rounded up to a tenth, so that the gauge never shows more than was said. */
const upToTenth = (psi: number): number => Math.ceil(psi * 10) / 10

const dayWords = (day: string): string =>
  new Intl.DateTimeFormat('en-US', {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'short',
    day: 'numeric',
  }).format(new Date(`${day}T00:00:00.000Z`))

export const nextSteps: NextStepsWording = {
  'call-before-moving': () => 'Call us before the car is moved; we tell you how it gets home or to us.',
  retorque: ({ miles, at }) => {
    const readings = at
      ? `, at ${number(Math.round(at.from.value))} to ${number(Math.round(at.to.value))} ${at.to.unit}`
      : ''
    return `In ${number(miles.from)} to ${number(miles.to)} miles${readings}: come back for a free check of the wheel torque, no appointment.`
  },
  'report-the-light': () =>
    `Tell us what the warning light does on the next ${proofDriveMinutes} minutes of driving.`,
  'warm-tires': ({ overPsi }) =>
    `The tires may read up to ${number(upToTenth(overPsi), 1)} psi over the label while warm. That is on purpose; do not let air out.`,
  'check-pressures': ({ every }) =>
    `Check all pressures once a ${every} with cold tires, against the door label.`,
  'deferred-work': ({ day }) => `What you answered with Later comes up again on ${dayWords(day)}.`,
}
