import type { CustomerProblemsWording } from '../customer-problems.ts'

export const customerProblems: CustomerProblemsWording = {
  linkRefused: {
    title: 'El enlace no se conoce, se venció o fue retirado',
    detail: 'Abra el enlace más nuevo del taller, o pídale uno nuevo al taller.',
  },
  unavailable: {
    title: 'El servicio no puede trabajar en este momento',
    detail: 'Intente otra vez en un momento; no se perdió nada.',
  },
  readOnly: {
    title: 'No se puede agregar nada a esta orden',
    detail: 'El taller tiene que revisarla primero. Llame al taller.',
  },
  estimateChanged: {
    title: 'El presupuesto cambió',
    detail:
      'El presupuesto ya no es el que le mostró esta página. Cargue la página otra vez, léalo y contéstelo.',
  },
  anotherName: {
    title: 'La firma tiene otro nombre',
    detail: 'El nombre escrito como firma no es el nombre de quien decide. Escriba los dos igual.',
  },
  answeredBefore: {
    title: 'Usted ya contestó',
    detail: 'Su respuesta ya se recibió. Cargue la página otra vez para verla.',
  },
  fileTooLarge: {
    title: 'Este archivo es demasiado grande para ser un informe',
    detail: 'Elija el PDF que le dio el taller.',
  },
  other: {
    title: 'Esto no funcionó',
    detail: 'No se cambió nada. Cargue la página otra vez; si falla de nuevo, llame al taller.',
  },
  tooManyTries: (seconds) => ({
    title: 'Demasiados intentos en poco tiempo',
    detail: `Espere ${seconds} segundos y luego intente otra vez.`,
  }),
}
