import type { ReportPaperWording } from '../../report/paper.ts'

export const reportPaper: ReportPaperWording = {
  title: (report, order) => `Informe de presión de llantas ${report}, orden ${order}`,
  pageOneBookmark: 'Página uno: ¿puedo manejarlo?',
  foot: ({ report, order, page, pages, composedAt, timeZone }) =>
    `Informe ${report} · orden ${order} · página ${page} de ${pages} · ${composedAt}, horas en ${timeZone}`,
  ledgerFoot: (entry, hash) =>
    `Anotación ${entry} del libro, ${hash} · los números pequeños del margen son anotaciones de esta orden en el libro`,
  wheels: {
    wheel: 'Rueda',
    before: 'Antes',
    after: 'Después',
    label: 'Etiqueta',
    sensorBefore: 'Sensor antes',
    sensorAfter: 'Sensor después',
  },
  plan: {
    drawing: 'El vehículo desde arriba, con el frente hacia arriba.',
    before: 'antes',
    after: 'después',
    noReading: 'sin lectura',
    wheel: ({ name, mark, before, after, label }) =>
      `${name}: ${mark === null ? '' : `${mark}; `}antes ${before}, después ${after}, etiqueta ${label}.`,
  },
}
