import type { OrderState } from '@bayledger/ledger/state'
import type { Section } from '../content.ts'
import type { ReportContext } from './context.ts'
import { clockWords } from './figures.ts'

/** How anyone can check that this file is the one that was issued. */
export const genuineSection = (state: OrderState, context: ReportContext): Section => ({
  title: 'Is this report genuine?',
  blocks: [
    {
      kind: 'paragraph',
      text: `This file is sealed with the shop’s digital signature: a PDF reader shows whether one byte was changed. Drop it at ${context.checkAddress} to have it compared with the shop’s register.`,
      entry: null,
    },
    {
      kind: 'paragraph',
      text: `Composed ${clockWords(context.composedAt, context.timeZone)} from ledger entry ${state.seq}, whose hash is ${(state.headHash.match(/.{1,8}/g) ?? []).join(' ')}. Template ${context.templateVersion}.${context.supersedes ? ` It supersedes report ${context.supersedes}.` : ''}`,
      entry: null,
    },
  ],
})
