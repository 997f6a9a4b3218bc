import type { ReportFindingsWording } from '../../report/findings.ts'
import { observations } from '../observations.ts'
import { reportCells } from './cells.ts'
import { reportFound } from './found.ts'

const regreso = 'Este vehículo regresó después de un trabajo que hicimos.'

export const reportFindings: ReportFindingsWording = {
  title: 'Resultados',
  notIssued: reportFound.notIssued,
  computed: (ruleSet, confirmation) =>
    `Calculado con el juego de reglas ${ruleSet} a partir de lo que se anotó al llegar. ${confirmation}`,
  confirmation: {
    open: 'Todavía no lo confirma un técnico.',
    agrees: (who) => `Lo confirmó ${who}.`,
    differs: (who, finding, reason) => `${who} no está de acuerdo y encuentra: ${finding}. Razón: ${reason}`,
  },
  comeback: {
    cause: (cause) => `${regreso} Por qué: ${cause}`,
    causes: {
      workmanship: 'nuestro trabajo no quedó bien, o no quedó terminado.',
      'part-failed': 'una pieza que pusimos ya no funciona.',
      'new-damage': 'le pasó algo después de esa visita.',
      'not-found': 'no encontramos la causa.',
    },
    notRecorded: `${regreso} No se anotó por qué.`,
  },
  named: (title, confidence) => `${title}. ${confidence}.`,
  next: (action) => `Sigue: ${action}`,
  unchecked: 'No se revisó en esta visita; los resultados no se basan en esto:',
  notPossible: (field, why) => `${field}: ${why}`,
  values: { ...observations, yes: 'sí', no: 'no', 'not-checked': reportCells.notChecked },
  units: { months: 'meses', years: 'años' },
}
