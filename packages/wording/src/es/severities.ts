import type { SeveritiesWording } from '../severities.ts'

export const severities: SeveritiesWording = {
  'do-not-drive': 'No maneje',
  'do-not-open-the-tire': 'No abrir la llanta',
  'repair-before-release': 'Reparar antes de entregar',
  cause: 'Causa',
  'also-found': 'También se encontró',
  unexplained: 'Todavía sin explicación',
  'not-checked': 'No se revisó',
  'for-information': 'Para su información',
  contradiction: 'Estas dos cosas no pueden ser ciertas a la vez',
  'could-not-be-checked': 'No se pudo revisar',
  'good-as-measured': 'Bien según lo medido',
}
