import type { ReportGenuineWording } from '../../report/genuine.ts'
import { reportPageOne } from './page-one.ts'

export const reportGenuine: ReportGenuineWording = {
  title: reportPageOne.titles.genuine,
  sealed: (address) =>
    `This file is sealed with the shop’s digital signature: a PDF reader shows whether one byte was changed. Upload it at ${address} to have it compared with the shop’s register.`,
  key: (fingerprint, address) =>
    `Anybody can make a signature in this shop’s name, so compare the key: the SHA-256 of its public key is ${fingerprint}. The shop’s keys are listed at ${address}.`,
  stamp: ({ is, authority }, address) =>
    is === 'within'
      ? `The time-stamp authority at ${authority} confirmed when this file was sealed (RFC 3161). ${address} and many PDF readers show its time.`
      : `This file was sealed without a time-stamp: the authority at ${authority} could not be had at that moment. If it confirms the file later, ${address} shows its time.`,
  composed: ({ moment, entry, hash, template, supersedes }) =>
    `Composed ${moment} from ledger entry ${entry}, whose hash is ${hash}. Template ${template}.${supersedes === null ? '' : ` It supersedes report ${supersedes}.`}`,
}
