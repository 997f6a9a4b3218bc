import type { CustomerEstimateWording } from '../customer-page.ts'
import { ended } from './ended.ts'

export const customerEstimate: CustomerEstimateWording = {
  title: 'Cuánto cuesta',
  version: (revision) => `Versión ${revision}`,
  ready: (time) => ended(`Si dice que sí ahora, estará listo para: ${time}`),
  stillUnsafe: 'Decir Sí a otro trabajo no hace que sea seguro manejar el vehículo.',
  look: 'La inspección, como se acordó',
  total: 'Lo que usted paga, con impuesto',
  answers: { authorized: 'Sí', declined: 'No', deferred: 'Hoy no' },
  question: {
    insteadOf: (title) => `Esto es en lugar de: ${title}. Puede elegir solo una de las opciones.`,
    isNew: 'Nuevo desde la versión anterior.',
    changed: (sum) => `Cambió desde la versión anterior. Era ${sum}.`,
    eachPrice: 'Ver cada precio',
    tax: 'Impuesto',
    yours: '¿Quiere esto?',
    onlyNo: 'No, ya no lo quiero',
    given: 'Su respuesta:',
    notGiven: 'sin respuesta',
    onceDriven: 'Cuando se pueda manejar otra vez: ',
    lookTerms: {
      charged: () => 'Usted aceptó esto antes de que empezáramos. Se cobra sin importar su respuesta.',
      'waived-with-work': (sum) =>
        `Usted aceptó esto antes de que empezáramos. Es gratis si dice Sí a algún trabajo, y cuesta ${sum} si no.`,
      waived: () => 'Esto es gratis.',
    },
  },
  answered: {
    title: 'Su respuesta',
    recorded: 'Gracias. Su respuesta quedó guardada, con su nombre y esta versión del presupuesto.',
    next: ({ work, owes, ready, mayDrive }) => {
      if (work === 'none')
        return mayDrive
          ? 'No le hacemos ningún otro trabajo. Puede recogerlo en nuestro horario.'
          : 'No le hacemos ningún otro trabajo. No se debe manejar como está: llámenos para hablar de la grúa.'
      const begins =
        work === 'begun' ? 'Ya empezamos el trabajo' : 'Empezamos en cuanto se libere un lugar en el taller'
      return `${ended(`${begins}${ready === null ? '' : `, y estará listo para: ${ready}`}`)} Le llamamos antes de que cambie el precio o la hora.${owes ? ' Usted paga cuando lo recoja.' : ''}`
    },
    afterNo: 'Si cambia de opinión sobre un No, llame al taller.',
    answerDeferred: 'Contestar lo que dejó para después',
    takeBack: 'Retirar un Sí',
    takingBack: 'Ese trabajo no ha empezado. Diga No abajo a lo que ya no quiere, y firme.',
    keep: 'Dejar mi respuesta como está',
  },
  sign: {
    title: 'Firmar',
    youAre: 'Usted es',
    relations: {
      owner: 'El dueño o la dueña de este vehículo',
      'named-person': 'Alguien que el dueño nombró para decidir',
      'fleet-contact': 'Administro autos de una empresa',
    },
    name: 'Su nombre',
    signature: 'Su firma',
    before: 'Antes de enviar',
    electronic: {
      label: 'Acepto decidir y recibir el documento en forma electrónica.',
      detail: 'Puede pedirlo en papel, y puede cambiar de opinión en cualquier momento: llame al taller.',
    },
    parts: 'Quiero que me devuelvan las piezas que quiten.',
    send: 'Enviar mi respuesta',
    loadAgain: 'Cargar la página otra vez',
    missing: {
      answers: (open) =>
        open === 1
          ? 'Una pregunta de arriba todavía no tiene respuesta.'
          : `${open} preguntas de arriba todavía no tienen respuesta.`,
      relation: 'Diga quién es usted.',
      name: 'Escriba su nombre.',
      signature: 'Firme en el espacio, o escriba su nombre en su lugar.',
      sameName: 'El nombre escrito como firma debe ser su nombre de arriba. Escriba los dos igual.',
      agreement: 'Acepte un documento electrónico, o llame al taller para pedirlo en papel.',
    },
  },
}
