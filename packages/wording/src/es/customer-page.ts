import { capitalized } from '../capitalized.ts'
import type { CustomerPageWording } from '../customer-page.ts'
import { ended } from './ended.ts'
import { lightWasOff } from './lights.ts'

const label = (psi: number | null): string => (psi === null ? 'sin dato en la etiqueta' : `debe tener ${psi}`)

const silent = (tries: number): string => `sin respuesta ×${tries}`

export const customerPage: CustomerPageWording = {
  document: {
    title: 'Su vehículo',
    needsScript:
      'Esta página necesita JavaScript. Actívelo, cargue la página otra vez o llame al taller que le envió el enlace.',
  },
  opening: 'Abriendo la página de su vehículo…',
  notWhole: {
    title: 'Esta dirección está incompleta.',
    detail: 'Abra otra vez el enlace del mensaje que le envió el taller, o llame al taller.',
  },
  titles: {
    canDrive: '¿Puedo manejarlo?',
    dangerous: 'Lo que es peligroso',
    light: 'La luz de advertencia',
    report: 'Su informe',
  },
  how: 'Cómo revisarlo y por qué',
  sensorIs: 'Un sensor es la pieza pequeña de cada rueda que le dice a su auto cuánto aire tiene la llanta.',
  photos: (count) => (count === 1 ? 'Ver la foto' : `Ver las ${count} fotos`),
  noCause: {
    'still-looking': 'El taller todavía está revisando. Esta página dirá lo que se encontró.',
    'was-off': lightWasOff,
    unexplained: 'Hasta ahora no encontramos nada que lo explique.',
  },
  technicianDiffers:
    'Nuestro técnico ve otra causa y se la va a explicar. Llámenos si todavía no lo hemos hecho.',
  found: {
    words: {
      'do-not-drive': 'No maneje',
      'do-not-open-the-tire': 'Aquí se trata con cuidado',
      'repair-before-release': 'Se debe reparar antes de que salga',
      cause: 'La causa',
      unexplained: 'Lo que sabemos hasta ahora',
    },
    marks: {
      'do-not-drive': 'No maneje',
      'do-not-open-the-tire': 'Cuidado',
      'repair-before-release': 'Reparar',
      cause: 'Causa',
      unexplained: 'En duda',
    },
    sensorMark: 'Su sensor',
  },
  measured: {
    title: 'Ver lo que medimos',
    caption:
      'El aire de cada llanta cuando llegó su vehículo, y lo que pide la etiqueta de la puerta, en psi. El dibujo se ve desde arriba, con el frente arriba: LF es la rueda delantera izquierda, RF la delantera derecha, LR la trasera izquierda, RR la trasera derecha y SP la de repuesto.',
    at: (name) => `${capitalized(name)}:`,
    label,
    silent,
    wheel: ({ name, mark, pressure, labelPsi, silent: tries }) =>
      `${name}: ${[
        ...(mark === null ? [] : [mark]),
        ...(pressure === null
          ? []
          : [`${pressure} medido`, `${label(labelPsi)}${labelPsi === null ? '' : ' psi'}`]),
        ...(tries === null ? [] : [silent(tries)]),
      ].join(', ')}`,
  },
  report: {
    sealed: (number, day, time) =>
      `${ended(`Informe ${number}, sellado: ${day}, ${time}`)} Guárdelo: dice qué estaba mal, qué se hizo y qué sigue.`,
    open: 'Abrir el informe (PDF)',
    check: {
      before: 'Cualquiera puede comprobar que un informe no fue cambiado: ',
      link: 'suba el archivo aquí',
      after: '.',
    },
  },
  question: '¿Tiene preguntas?',
  call: (shop, telephone) => (telephone === null ? `Llame a ${shop}.` : `Llame a ${shop}, ${telephone}`),
}
