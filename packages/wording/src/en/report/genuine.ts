import type { ReportGenuineWording } from '../../report/genuine.ts'
import { reportPageOne } from './page-one.ts'

export const reportGenuine: ReportGenuineWording = {
  title: reportPageOne.titles.genuine,
  sealed: (address) =>
    `This file is sealed with the shop’s digital signature: a PDF reader shows whether one byte was changed. Drop it at ${address} to have it compared with the shop’s register.`,
  composed: ({ moment, entry, hash, template, supersedes }) =>
    `Composed ${moment} from ledger entry ${entry}, whose hash is ${hash}. Template ${template}.${supersedes === null ? '' : ` It supersedes report ${supersedes}.`}`,
}
