import type { ReadyWording } from '../ready.ts'
import { ended } from './ended.ts'

export const ready: ReadyWording = {
  about: (when) => ended(`Calculamos que estará listo aproximadamente a esta hora: ${when}`),
  afterPart: ({ when, part }) =>
    `${ended(`Esperamos una pieza que debe llegar a esta hora: ${part}`)} ${ended(`Calculamos que el vehículo estará listo aproximadamente a esta hora: ${when}`)}`,
  partWithoutDate: 'Esperamos una pieza y todavía no sabemos cuándo llega. Le avisaremos.',
  later: ({ vehicle, when, promised }) =>
    `Su ${vehicle} estará listo más tarde de lo que dijimos. ${ended(`Hora que dijimos: ${promised}`)} ${ended(`Nueva hora aproximada: ${when}`)} Disculpe la molestia.`,
}
