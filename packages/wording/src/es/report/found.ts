import type { Answer } from '@bayledger/reckoning/estimate'
import type { LowTire, ReportFoundWording } from '../../report/found.ts'
import { lightWasOff } from '../lights.ts'
import { listed } from './listed.ts'

const answered: Readonly<Record<Answer, string>> = {
  authorized: 'Usted dijo Sí; no está terminado.',
  declined: 'Usted dijo No.',
  deferred: 'Usted dijo “Hoy no”.',
}

/** "trasera derecha 24.0 psi de 33" */
const low = (tires: readonly LowTire[]): string =>
  listed(tires.map(({ wheel, psi, label }) => `${wheel} ${psi} psi de ${label}`))

export const reportFound: ReportFoundWording = {
  notIssued: 'En esta orden no se dio ningún resultado.',
  settled: 'Inseguro cuando llegó, resuelto aquí',
  onTheSpare: 'Inseguro cuando llegó; en su lugar va la llanta de repuesto',
  removes: (work, answer) =>
    `Lo que lo arregla: ${work}. ${answer === null ? 'Usted no ha contestado.' : answered[answer]}`,
  removesUnpriced: (work) =>
    `Lo que lo arregla: ${work ?? 'una reparación'}. No se dio precio; se lo damos cuando lo pida.`,
  offer: (work, price) =>
    `${work}, ${price === null ? 'precio borrado a petición' : `${price} con impuesto`}`,
  ownFinding: (finding, reason) => `${finding} (resultado del propio técnico: ${reason})`,
  theLight: 'La luz de advertencia',
  causeOfTheLight: 'Causa de la luz',
  dangerExplainsIt: 'El peligro de arriba también explica la luz.',
  noCause: {
    'nobody-looked': 'Nadie vio qué hace, así que no se nombra una causa.',
    'was-off': lightWasOff,
    unexplained: 'No se encontró nada que lo explique.',
  },
  done: (work) => `Lo que se hizo: ${work.join('; ')}.`,
  agreed: (work) => `Acordado y no terminado: ${work.join('; ')}.`,
  nothingDone: 'No se hizo nada al respecto.',
  alsoLow: (tires) => `También bajas cuando llegó: ${low(tires)}.`,
  left: {
    word: 'Se deja como está',
    low: 'Se deja baja',
    onTheLabel: (tires) => `${low(tires)} según la etiqueta`,
  },
  lowestOf: (count) => `, la más baja de ${count}`,
}
