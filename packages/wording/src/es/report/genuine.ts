import type { ReportGenuineWording } from '../../report/genuine.ts'
import { reportPageOne } from './page-one.ts'

export const reportGenuine: ReportGenuineWording = {
  title: reportPageOne.titles.genuine,
  sealed: (address) =>
    `Este archivo está sellado con la firma digital del taller: un lector de PDF muestra si se cambió un solo byte. Póngalo en ${address} para compararlo con el registro del taller.`,
  composed: ({ moment, entry, hash, template, supersedes }) =>
    `Hecho el ${moment} a partir de la anotación ${entry} del libro, con huella ${hash}. Plantilla ${template}.${supersedes === null ? '' : ` Reemplaza al informe ${supersedes}.`}`,
}
