import { capitalized } from '../../capitalized.ts'
import type { PressureDone, ReportDoneWording, SetBy, TorqueDone } from '../../report/done.ts'
import { wheels } from '../wheels.ts'
import { counted } from './counted.ts'
import { listed } from './listed.ts'

const tookOff = (names: readonly string[]): string =>
  names.length === 1 ? `Se quitó la rueda ${listed(names)}` : `Se quitaron las ruedas ${listed(names)}`

const checked = (check: TorqueDone['check']): string => {
  if (check === null) return ''
  const later = check.minutesLater === null ? '' : ` ${check.minutesLater} min después`
  return check.by === 'same-person'
    ? `, se revisó otra vez${later}; no había una segunda persona`
    : `, lo revisó una segunda persona${later}`
}

const because: Readonly<Record<SetBy, string>> = {
  day: ' por la temperatura de hoy',
  label: ' según la etiqueta',
  limit: ', hasta donde permite su límite',
}

const setTo = ({ psi, road, spare }: PressureDone): string =>
  `${listed([...(road ?? ['las cuatro llantas']), ...(spare ? [wheels.names.SP] : [])])} a ${psi} psi`

const learned = {
  learned: 'el auto aceptó sus sensores',
  refused: 'el auto no aceptó sus sensores',
  'learns-while-driven': 'el auto reconoce sus sensores mientras se maneja',
  reset: 'se reinició el sistema de monitoreo',
} as const

export const reportDone: ReportDoneWording = {
  onlyLooked: 'Se miró y se midió. No se hizo ningún trabajo.',
  nothingRecorded: 'No hay nada anotado.',
  fitted: (sensors) =>
    `Se puso un sensor nuevo: ${listed(sensors.map(({ wheel, id }) => `${wheel} (ID nuevo ${id})`))}.`,
  done: (work) => `Hecho: ${work.join('; ')}.`,
  notTorqued: (names) => `${tookOff(names)}; todavía sin apretar.`,
  torqued: ({ wheels: names, figure, took, check }) =>
    `${tookOff(names)}; apriete a ${figure}${took === null ? '' : ` en ${took}`}${checked(check)}.`,
  set: (groups) =>
    `Presión ajustada: ${groups.map(({ by, set }) => `${listed(set.map(setTo))}${because[by]}`).join('; ')}.`,
  proven: ({ relearn, drive }) => {
    const parts = [
      ...(relearn === null ? [] : [learned[relearn]]),
      ...(drive === null
        ? []
        : [
            `manejamos ${counted(drive.minutes, 'minuto')}${drive.byTheClock === null ? '' : ` (${drive.byTheClock} según el reloj)`} y al final la luz de advertencia estaba ${drive.isLightOff ? 'apagada' : 'encendida'}`,
          ]),
    ]
    return `${capitalized(parts.join('; '))}.`
  },
  price: (price, paid, givenBack) =>
    `Precio con impuesto: ${price}. Pagado: ${paid}${givenBack === null ? '' : `, ya restado lo que se devolvió (${givenBack})`}.`,
}
