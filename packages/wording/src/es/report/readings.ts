import type { ReportReadingsWording } from '../../report/readings.ts'
import { reportCells } from './cells.ts'
import { listed } from './listed.ts'

const codesStored = 'Códigos guardados en el vehículo'

export const reportReadings: ReportReadingsWording = {
  titles: { arrival: 'Lecturas al llegar', closing: 'Lecturas al salir' },
  noneAfter: 'Después del trabajo no se leyó otra vez ningún sensor.',
  readings: {
    caption: 'Presiones y sensores',
    columns: {
      wheel: 'Rueda',
      gauge: 'Medidor',
      sensor: 'Sensor',
      temperature: 'Temp. del sensor',
      battery: 'Batería',
      frequency: 'Frecuencia',
      answer: 'Respuesta',
      id: 'ID, últimos 4',
      stored: 'En el vehículo',
    },
  },
  when: {
    caption: 'Cuándo, con qué y quién',
    columns: { wheel: 'Rueda', gauge: 'Medidor', gauged: 'Se midió', sensorRead: 'Sensor leído' },
  },
  gaugeRead: (code, read) => `${code}, marcó ${read}`,
  gaugeCorrected:
    'Las presiones del medidor están corregidas: lo que marcó el medidor, menos lo que marca de más que el medidor patrón.',
  asSet: (pressure) => `${pressure}, como se ajustó`,
  noAnswer: 'sin respuesta',
  answers: 'contesta',
  answersAs: (id) => (id === null ? 'contesta, ID no leído' : `contesta, ID ${id}`),
  battery: { ok: 'bien', low: 'baja', 'not-reported': 'no informada' },
  otherFrequency: (found, wanted) => `${found}, no ${wanted}`,
  stored: {
    nothing: 'no, nada guardado',
    none: 'ningún ID guardado',
    id: (id) => `guardado ${id}`,
    same: 'sí',
    other: (id) => `no, ${id}`,
  },
  field: (field, why) => `${field} (${why})`,
  notPossible: (fields) => `No se pudo revisar: ${listed(fields)}.`,
  code: ({ text, class: group, wheel }) =>
    `${text === null ? '' : `${text} `}(${group}${wheel === null ? '' : `, ${wheel}`})`,
  codes: (codes) => `${codesStored}: ${codes.length === 0 ? 'ninguno' : listed(codes)}.`,
  codesNotChecked: `${codesStored}: ${reportCells.notChecked}.`,
  codesUnreadable: (why) =>
    `${codesStored}: ${reportCells.couldNotBeChecked}${why === null ? '' : `: ${why}`}.`,
  labelNotVerified: (pressure) => `${pressure}, sin verificar`,
}
