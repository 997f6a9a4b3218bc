import type { NoAnswer, ReportAnswersWording } from '../../report/answers.ts'

const answer = (of: NoAnswer): string => {
  switch (of.answer) {
    case 'none':
      return 'Sin respuesta'
    case 'taken-back':
      return 'No, después de un Sí que se retiró antes de empezar ese trabajo'
    case 'declined':
      return 'No'
    case 'deferred':
      return of.until === null ? 'Hoy no' : `Hoy no, hasta el ${of.until}`
  }
}

export const reportAnswers: ReportAnswersWording = {
  title: 'Sus respuestas',
  nothingOpen: 'No se contestó “No” ni “Hoy no” a nada.',
  open: {
    caption: 'Rechazado y dejado para después',
    columns: {
      proposal: 'Propuesta',
      price: 'Precio',
      answer: 'Respuesta',
      caution: 'Advertencia mostrada',
    },
  },
  answer,
  noCaution: 'no se mostró ninguna',
  consents: {
    caption: 'Consentimientos',
    columns: { estimate: 'Presupuesto', by: 'Contestó', how: 'Cómo', when: 'Cuándo' },
  },
  version: (revision, total) => `versión ${revision}, ${total ?? 'el total no está guardado'}`,
  channels: { 'in-person': 'en el mostrador', link: 'por enlace', telephone: 'por teléfono' },
  relations: {
    owner: 'dueño o dueña',
    'named-person': 'persona nombrada por el dueño',
    'fleet-contact': 'administra autos de una empresa',
    driver: 'quien maneja',
  },
  refused: {
    caption: 'Rechazado aunque es inseguro',
    columns: {
      finding: 'Resultado',
      proof: 'Prueba',
      caution: 'Advertencia mostrada',
      by: 'Lo explicó',
    },
  },
  signed: 'Firmado por el cliente.',
  witnessed: (name) => `No quiso firmar; testigo: ${name ?? 'el nombre no está guardado'}.`,
  leaves: {
    towed: 'Se lo lleva una grúa.',
    'sound-spare': 'Sale con su llanta de repuesto.',
    'as-it-is': 'Sale como está.',
  },
}
