import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import type { Section } from '../content.ts'
import { paragraph } from './blocks.ts'
import type { ReportContext } from './context.ts'
import { clockWords } from './figures.ts'

const { genuine } = english.report

/** How anyone can check that this file is the one that was issued. */
export const genuineSection = (state: OrderState, context: ReportContext): Section => ({
  title: genuine.title,
  blocks: [
    paragraph(genuine.sealed(context.checkAddress)),
    paragraph(
      genuine.composed({
        moment: clockWords(context.composedAt, context.timeZone),
        entry: state.seq,
        hash: (state.headHash.match(/.{1,8}/g) ?? []).join(' '),
        template: context.templateVersion,
        supersedes: context.supersedes,
      }),
    ),
  ],
})
