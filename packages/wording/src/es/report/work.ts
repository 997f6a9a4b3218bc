import { inReadingOrder, readingOrder } from '@bayledger/reckoning/wheels'
import type { ReportWorkWording } from '../../report/work.ts'
import { reportCells } from './cells.ts'

const { notRecorded } = reportCells

export const reportWork: ReportWorkWording = {
  title: 'Trabajo',
  nothing: 'No se quitó ninguna rueda ni se puso ninguna pieza.',
  parts: {
    caption: 'Piezas y trabajo, por rueda',
    columns: {
      wheel: 'Rueda',
      part: 'Pieza, lote, hecha',
      id: 'ID nuevo',
      kit: 'Juego de piezas',
      torque: 'Apriete de válvula',
      inside: 'Dentro de la llanta',
      leak: 'Prueba de fuga',
    },
  },
  noneFitted: 'no se puso ninguna',
  kit: ({ number, lot }) => (lot === null ? number : `${number}, lote ${lot}`),
  part: ({ number, lot, made }) => `${number}, lote ${lot ?? notRecorded}, hecha ${made ?? notRecorded}`,
  tight: 'sin fuga',
  leaks: (where) => (where === null ? 'pierde aire' : `pierde aire por ${where}`),
  broken: (wheel, how) => `El sensor de la rueda ${wheel} se rompió en nuestras manos: ${how}.`,
  byHand: {
    caption: 'Anotado a mano',
    columns: { wheel: 'Rueda', step: 'Paso', recorded: 'Anotado' },
  },
  vehicle: 'vehículo',
  balance: (left, over) =>
    left.shows === 'no-figure'
      ? 'la máquina no muestra cifra'
      : `quedan ${left.inner} ${left.unit} en el lado interior y ${left.outer} ${left.unit} en el exterior${
          over === null
            ? ''
            : `: más de los ${over} g por lado que son usuales, después de balancearla otra vez`
        }`,
  tires: ({ arrows, sizes }) =>
    [
      arrows.length === 0
        ? 'ninguna llanta tiene flecha'
        : `con flecha, rueda en un solo sentido: ${inReadingOrder(arrows).join(', ')}`,
      ...readingOrder.flatMap((wheel) => (sizes[wheel] ? [`medida leída en ${wheel}: ${sizes[wheel]}`] : [])),
    ].join('; '),
}
