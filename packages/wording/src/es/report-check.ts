import type { ReportCheckWording } from '../customer-page.ts'

export const reportCheck: ReportCheckWording = {
  title: '¿Es auténtico este informe?',
  what: 'Elija el PDF que le dieron. Se compara con lo que selló este taller, y no se guarda.',
  choose: 'Elija un informe, o suéltelo aquí',
  checking: 'Comprobando…',
  verdicts: {
    genuine: 'Auténtico y sin cambios',
    changed: 'Cambiado después de sellarse',
    unknown: 'No es un informe de este taller',
  },
  superseded: (report) => `Un informe posterior, ${report}, lo completa.`,
}
