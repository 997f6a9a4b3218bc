import type { ReportTorqueWording } from '../../report/torque.ts'
import { listed } from './listed.ts'
import { sourceWords } from './source-words.ts'

const stale = { 'came-off-again': 'the wheel came off again', overtaken: 'overtaken' } as const

export const reportTorque: ReportTorqueWording = {
  title: 'Wheel torque',
  noWheelOff: 'No wheel came off.',
  figure: (source) =>
    `Figure from: ${sourceWords(source)}. A click wrench shows that the figure was reached; it measures nothing beyond that. The vehicle maker’s figure governs.`,
  rounds: {
    caption: 'Rounds',
    columns: {
      wheel: 'Wheel',
      round: 'Round',
      setTo: 'Set to',
      clicked: 'Clicked',
      moved: 'Moved',
      wrench: 'Wrench',
      who: 'Who and when',
    },
  },
  round: {
    half: 'about half',
    full: 'full figure',
    again: 'check round',
    check: 'second person',
    'own-check': 'own check',
    'after-miles': 'after the miles',
  },
  stale: (round, why) => `${round}; ${stale[why]}`,
  notDone: 'not done',
  clicked: (clicked, total, fastener) => `${clicked} of ${total} ${fastener}s`,
  moved: (places, fastener) => (places.length === 0 ? 'none' : `${fastener} ${listed(places.map(String))}`),
  clock: ({ took, checkedAfterMinutes: minutes }) =>
    [
      ...(took === null ? [] : [`torqued in ${took}`]),
      ...(minutes === null ? [] : [`checked ${minutes === 0 ? 'within a minute' : `${minutes} min later`}`]),
    ].join(', '),
  byTheClock: (wheel, clock) => `By the tablet’s clock, ${wheel}: ${clock}.`,
  checkedAlone: (wheels) =>
    `No second person was available: whoever torqued the ${listed(wheels)} wheel${wheels.length === 1 ? '' : 's'} checked it again.`,
  wrench: ({ code, dueOn, clicks, low, high, unit }) =>
    `Wrench ${code}: calibration due ${dueOn}, ${clicks} clicks before this use, range ${low} to ${high} ${unit}.`,
}
