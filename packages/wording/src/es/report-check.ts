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
  stamp: ({ where, verdict, authority, moment }) => {
    if (verdict === 'bad')
      return 'El sello de tiempo de este informe no es válido; nadie fuera del taller confirma cuándo se selló.'
    if (verdict === 'unknown-authority')
      return `Un sello de tiempo de “${authority}” dice ${moment}. Este servicio no puede saber si esa autoridad es auténtica.`
    return where === 'within'
      ? `${authority} confirmó que este informe ya estaba sellado el ${moment}. Su sello de tiempo está en el archivo.`
      : `${authority} confirmó que este informe existía el ${moment}. Su sello de tiempo se hizo después de sellar el informe, y se guarda aquí.`
  },
  saveStamp: 'Guardar el sello de tiempo (RFC 3161)',
  superseded: (report) => `Un informe posterior, ${report}, lo completa.`,
}
