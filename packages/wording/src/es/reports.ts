import type { CheckedFile, ReportsWording } from '../reports.ts'

const checked = (file: CheckedFile): string => {
  switch (file.verdict) {
    case 'genuine':
      return file.supersededBy === null
        ? `Auténtico: este es el informe ${file.number}, byte por byte como lo selló este taller.`
        : `Auténtico: este es el informe ${file.number} como lo selló este taller. Lo reemplaza uno más nuevo, ${file.supersededBy}.`
    case 'changed':
      return `Cambiado: este archivo dice que es el informe ${file.number}, y no es lo que selló este taller. Pida el original al taller.`
    case 'unknown':
      return 'Desconocido: este taller no ha sellado ningún archivo así. Revise que sea el informe mismo, no un escaneo ni una impresión.'
  }
}

export const reports: ReportsWording = {
  checked,
  sealReason: 'Sellado por el taller cuando se terminó la orden',
}
