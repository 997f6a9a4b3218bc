import type { ReportProofWording } from '../../report/proof.ts'
import { ended } from '../ended.ts'
import { reportCells } from './cells.ts'
import { lightSeen } from './light-seen.ts'
import { listed } from './listed.ts'

const methods = {
  automatic: 'automático: el vehículo reconoce mientras se maneja',
  stationary: 'parado: cada rueda activada por turno',
  connector: 'ID enviados por el conector de diagnóstico',
  reset: 'reinicio',
} as const

const results = {
  learned: 'aceptado por el vehículo',
  refused: 'rechazado por el vehículo',
  'learns-while-driven': 'el vehículo reconoce mientras se maneja',
} as const

export const reportProof: ReportProofWording = {
  title: 'Reconocimiento y comprobación',
  verdict: (word, words) => `${word}: ${words}.`,
  relearn: ({ method, result, confirmed, took, by, moment }) =>
    `Reconocimiento: ${methods[method]}; ${results[result]}; lugares confirmados: ${confirmed.length === 0 ? 'ninguno' : listed(confirmed)}${took}. ${by}, ${moment}.`,
  noRelearn: 'Reconocimiento: no se anotó ninguno.',
  light: (seen) =>
    `La luz de advertencia en la revisión final: ${seen === null ? reportCells.notChecked : `${lightSeen(seen)}${seen.took}`}.`,
  noDrive: 'Manejo de comprobación: no se anotó ninguno.',
  drives: {
    caption: 'Manejo de comprobación',
    columns: {
      by: 'Manejó',
      driven: 'Tiempo',
      clock: 'Según el reloj',
      odometerOut: 'Odómetro al empezar',
      odometerIn: 'Odómetro al terminar',
      light: 'Luz al final',
      key: 'Apagar y encender el auto',
    },
  },
  notTimed: 'sin medir el tiempo',
  lightOff: 'apagada',
  lamp: {
    'lights-and-goes-out': 'se encendió al encender el auto y se apagó',
    'stays-lit': 'se quedó encendida',
    dark: 'se quedó apagada al encender el auto',
  },
  odometerReadTwice:
    'El odómetro de este manejo era poco probable junto a lo que marcaba antes. Se leyó una segunda vez.',
  slept:
    'La tableta se durmió o se volvió a encender durante este manejo; el tiempo es según su reloj del día.',
  doubted: (typed, clock) =>
    `Se anotaron ${typed} min de este manejo; el reloj tiene tiempo para ${clock}. Los minutos no cuentan para la comprobación.`,
  left: (by, moment) => ended(`El vehículo salió a manejar: ${by}, ${moment}`),
}
