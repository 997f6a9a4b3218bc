import type { ReportArrivalWording } from '../../report/arrival.ts'
import { reportCells } from './cells.ts'
import { counted } from './counted.ts'
import { lightSeen } from './light-seen.ts'
import { listed } from './listed.ts'

const { notChecked } = reportCells

export const reportArrival: ReportArrivalWording = {
  title: 'El vehículo como llegó',
  noComplaint: 'No se anotó la queja.',
  told: (words) => `Se contó: “${words}”`,
  lightTold: (does) =>
    does === null
      ? 'No se preguntó o no se sabe qué hacía la luz de advertencia.'
      : `La luz de advertencia, según se contó: ${does}.`,
  event: ({ event, wheel, daysAgo }) =>
    `${event}${wheel === null ? '' : `, rueda ${wheel}`}${daysAgo === null ? '' : `, hace ${counted(daysAgo, 'día')}`}`,
  events: (events) =>
    events.length === 0
      ? 'No se contó ningún suceso reciente.'
      : `Sucesos recientes que se contaron: ${listed(events)}.`,
  light: (seen) =>
    seen === null
      ? `La luz de advertencia, vista por nosotros: ${notChecked}.`
      : `La luz de advertencia, vista por nosotros (${seen.by}, ${seen.moment}): ${lightSeen(seen)}.`,
  around: (of) =>
    of === null
      ? `Temperatura exterior y estado de las llantas: ${notChecked}.`
      : `Afuera ${of.outdoor}; llantas ${of.tires}${of.tire === null ? '' : `, ${of.tire}`}; altitud ${of.altitude} pies.`,
  damage: {
    caption: 'Llantas, válvulas y ruedas, como llegaron',
    columns: {
      wheel: 'Rueda',
      tread: 'Dibujo',
      stem: 'Válvula',
      tire: 'Daño de la llanta',
      fasteners: 'Birlos y tuercas',
    },
  },
  prints: {
    caption: 'Lo que dicen las llantas mismas',
    columns: {
      wheel: 'Rueda',
      size: 'Medida en la llanta',
      bySheet: 'Medida según la hoja',
      dateCode: 'Número o código de fecha',
      age: 'Edad de la llanta',
    },
  },
  unread: (why) => `no se puede leer: ${why}`,
  years: (count) => counted(count, 'año'),
  damages: listed,
}
