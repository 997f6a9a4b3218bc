import type { ReportGenuineWording } from '../../report/genuine.ts'
import { reportPageOne } from './page-one.ts'

export const reportGenuine: ReportGenuineWording = {
  title: reportPageOne.titles.genuine,
  sealed: (address) =>
    `Este archivo está sellado con la firma digital del taller: un lector de PDF muestra si se cambió un solo byte. Súbalo a ${address} para compararlo con el registro del taller.`,
  key: (fingerprint, address) =>
    `Cualquiera puede hacer una firma con el nombre de este taller; por eso compare la clave: el SHA-256 de su clave pública es ${fingerprint}. Las claves del taller están en ${address}.`,
  stamp: ({ is, authority }, address) =>
    is === 'within'
      ? `La autoridad de sellado de tiempo en ${authority} confirmó cuándo se selló este archivo (RFC 3161). ${address} y muchos lectores de PDF muestran su hora.`
      : `Este archivo se selló sin sello de tiempo: en ese momento no se pudo usar la autoridad en ${authority}. Si ella confirma el archivo después, ${address} muestra su hora.`,
  composed: ({ moment, entry, hash, template, supersedes }) =>
    `Hecho el ${moment} a partir de la anotación ${entry} del libro, con huella ${hash}. Plantilla ${template}.${supersedes === null ? '' : ` Reemplaza al informe ${supersedes}.`}`,
}
