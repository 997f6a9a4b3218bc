import { capitalized } from '../../capitalized.ts'
import type { PressureDone, ReportDoneWording, SetBy, TorqueDone } from '../../report/done.ts'
import { wheels } from '../wheels.ts'
import { counted } from './counted.ts'
import { listed } from './listed.ts'

const theWheels = (names: readonly string[]): string =>
  `the ${listed(names)} wheel${names.length === 1 ? '' : 's'}`

const checked = (check: TorqueDone['check']): string => {
  if (check === null) return ''
  const later = check.minutesLater === null ? '' : ` ${check.minutesLater} min later`
  return check.by === 'same-person'
    ? `, checked again${later}; no second person was available`
    : `, checked by a second person${later}`
}

const because: Readonly<Record<SetBy, string>> = {
  day: ' for today’s temperature',
  label: ' by the label',
  limit: ', as far as its limit allows',
}

const setTo = ({ psi, road, spare }: PressureDone): string =>
  `${listed([...(road ?? ['all four tires']), ...(spare ? [wheels.names.SP] : [])])} to ${psi} psi`

const learned = {
  learned: 'the car accepted its sensors',
  refused: 'the car did not accept its sensors',
  'learns-while-driven': 'the car learns its sensors while it is driven',
  reset: 'the monitoring system was reset',
} as const

export const reportDone: ReportDoneWording = {
  onlyLooked: 'Looked and measured. No work was done.',
  nothingRecorded: 'Nothing is recorded.',
  fitted: (sensors) =>
    `Fitted a new sensor: ${listed(sensors.map(({ wheel, id }) => `${wheel} (new ID ${id})`))}.`,
  done: (work) => `Done: ${listed(work)}.`,
  notTorqued: (names) => `Took off ${theWheels(names)}; not yet torqued.`,
  torqued: ({ wheels: names, figure, took, check }) =>
    `Took off ${theWheels(names)}; torqued to ${figure}${took === null ? '' : ` in ${took}`}${checked(check)}.`,
  set: (groups) =>
    `Set ${groups.map(({ by, set }) => `${listed(set.map(setTo))}${because[by]}`).join('; ')}.`,
  proven: ({ relearn, drive }) => {
    const parts = [
      ...(relearn === null ? [] : [learned[relearn]]),
      ...(drive === null
        ? []
        : [
            `we drove ${counted(drive.minutes, 'minute')}${drive.byTheClock === null ? '' : ` (${drive.byTheClock} by the clock)`} and the warning light was ${drive.isLightOff ? 'off' : 'on'} at the end`,
          ]),
    ]
    return `${capitalized(parts.join('; '))}.`
  },
  price: (price, paid, givenBack) =>
    `Price with tax: ${price}. Paid: ${paid}${givenBack === null ? '' : `, after ${givenBack} was given back`}.`,
}
