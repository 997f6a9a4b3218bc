import type { MessageFacts, MessagesWording } from '../messages.ts'
import { telephoneWords } from '../telephone.ts'
import { ended } from './ended.ts'

const call = ({ telephone }: MessageFacts): string =>
  telephone === null ? 'llámenos' : `llámenos al ${telephoneWords(telephone)}`

const goodForAWeek = (of: MessageFacts): string =>
  `El enlace sirve por una semana. Si ya no abre, ${call(of)}.`

export const messages: MessagesWording = {
  subjects: {
    estimate: ({ vehicle, shop }) => `Su ${vehicle}: qué encontramos y cuánto cuesta (${shop})`,
    report: ({ vehicle, shop }) => `Su ${vehicle}: el informe (${shop})`,
    retorque: ({ vehicle, shop }) =>
      `Su ${vehicle}: la revisión gratis de que las ruedas estén apretadas (${shop})`,
    deferred: ({ vehicle, shop }) => `Su ${vehicle}: el trabajo que dejó para después (${shop})`,
    'new-time': ({ vehicle, shop }) => `Su ${vehicle}: estará listo más tarde (${shop})`,
  },
  usual: {
    estimate:
      'Hola, {name}:\n\naquí puede leer qué encontramos en su {vehicle} y cuánto cuesta, y contestar: {link}',
    report: 'Hola, {name}:\n\nel informe del trabajo en su {vehicle} ya está sellado: {link}',
    retorque: 'Hola, {name}:\n\nquitamos ruedas de su {vehicle}. {when}',
    deferred: 'Hola, {name}:\n\nusted contestó “Hoy no” a un trabajo en su {vehicle}:\n\n{work}',
    'new-time':
      'Hola, {name}:\n\nsu {vehicle} estará listo más tarde de lo que dijimos. La nueva hora: {when}. Disculpe la molestia.',
  },
  example: {
    name: 'Jo Sample',
    vehicle: 'Linnet C',
    link: 'https://shop.example/customer#…',
    when: 'Después de 50 a 100 millas: regrese sin cita y revisamos gratis el apriete de las ruedas.',
    work: ['Sensor nuevo, trasera derecha', 'Llanta nueva, delantera izquierda'],
  },
  after: {
    estimate: (of) => `No se hace nada antes de que usted diga que sí. ${goodForAWeek(of)}`,
    report: (of) => `Guarde el informe: dice qué estaba mal, qué se hizo y qué sigue. ${goodForAWeek(of)}`,
    retorque: (of) =>
      `Si siente una vibración u oye un golpeteo, deténgase donde sea seguro, no siga manejando y ${call(of)}.`,
    deferred: (of) => `Para que lo hagamos, ${call(of)}. Los precios pueden haber cambiado desde entonces.`,
    'new-time': (of) => `Si esa hora no le conviene, ${call(of)}.`,
  },
  texts: {
    estimate: ({ shop, vehicle, link }) =>
      `${shop}: qué encontramos en su ${vehicle}, y su respuesta: ${link}`,
    report: ({ shop, vehicle, link }) => `${shop}: el informe de su ${vehicle}: ${link}`,
    'new-time': ({ shop, vehicle, lines }) =>
      ended(
        `${shop}: su ${vehicle} estará listo más tarde de lo que dijimos. La nueva hora: ${lines.join(' ')}`,
      ),
  },
  under: ({ shop, stop, about }) =>
    `Recibe esto de ${shop} porque ${
      about === 'job'
        ? 'aceptó recibir mensajes sobre su vehículo'
        : about === 'retorque'
          ? 'trabajamos en sus ruedas'
          : 'aceptó que se lo recordáramos'
    }. Para no recibir más de estos mensajes: ${stop}`,
  wrongFigure: (vehicle) =>
    `Un dato que teníamos registrado para el ${vehicle} estaba equivocado cuando trabajamos en él. Por favor, tráiganoslo: lo revisaremos sin costo con el dato del fabricante del vehículo. Si nota algo raro, no siga manejando; llámenos.`,
  stop: {
    title: 'Terminar los mensajes',
    ask: {
      job: (shop) => `${shop} ya no le mandará mensajes sobre el trabajo en su vehículo.`,
      retorque: (shop) => `${shop} ya no le recordará la revisión de que las ruedas estén apretadas.`,
      deferred: (shop) => `${shop} ya no le recordará el trabajo que dejó para después.`,
    },
    button: 'Terminar estos mensajes',
    done: {
      job: (shop) => `Listo. ${shop} ya no le manda mensajes sobre el trabajo en su vehículo.`,
      retorque: (shop) => `Listo. ${shop} ya no le recuerda la revisión de que las ruedas estén apretadas.`,
      deferred: (shop) => `Listo. ${shop} ya no le recuerda el trabajo que dejó para después.`,
    },
    unknown: 'Este enlace no está completo. Ábralo otra vez desde el mensaje, o llame al taller.',
  },
}
