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
  keys: 'Las claves que sellan aquí',
  keysAre:
    'Un lector de PDF muestra quién firmó un archivo con un nombre que cualquiera puede escribir. Cada informe imprime la huella de su clave; es una de estas.',
  keySince: (shop, day) => `${shop}, desde el ${day}:`,
  superseded: (report) => `Un informe posterior, ${report}, lo completa.`,
}
