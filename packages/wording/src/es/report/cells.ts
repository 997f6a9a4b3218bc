import type { ReportCellsWording } from '../../report/cells.ts'

const timed = { relearn: 'tardó', light: 'se observó' } as const

export const reportCells: ReportCellsWording = {
  notChecked: 'no se revisó',
  notRecorded: 'no se anotó',
  couldNotBeChecked: 'no se pudo revisar',
  notNumbered: 'sin número',
  erased: 'borrado a petición',
  noneExpected: 'no se espera ninguno',
  noneSeen: 'ninguno a la vista',
  silent: (tries) => `no contesta, ${tries === 1 ? '1 vez' : `${tries} veces`}`,
  twoClocks: (written, received) => `${written} según el aparato, recibido ${received}`,
  authors: {
    staff: 'personal, el nombre no está guardado',
    customer: 'el cliente',
    system: 'calculado por Bayledger',
  },
  took: (what, duration, slept) =>
    `; ${timed[what]} ${duration} según el reloj de la tableta${slept ? ', que mientras tanto se durmió o se volvió a encender' : ''}`,
}
