import type { OrderState } from '@bayledger/ledger/state'
import type { Section } from '../content.ts'
import { paragraph } from './blocks.ts'
import type { ReportContext } from './context.ts'
import { clockWords } from './figures.ts'
import type { Spoken } from './spoken.ts'

const genuine = ({ language }: Spoken) => language.report.genuine

/** How anyone can check that this file is the one that was issued. */
export const genuineSection = (state: OrderState, context: ReportContext): Section => ({
  title: genuine(context).title,
  blocks: [
    paragraph(genuine(context).sealed(context.checkAddress)),
    ...(context.sealKey === null
      ? []
      : [paragraph(genuine(context).key(inEights(context.sealKey), context.checkAddress))]),
    ...(context.stamp === null
      ? []
      : [paragraph(genuine(context).stamp(context.stamp, context.checkAddress))]),
    paragraph(
      genuine(context).composed({
        moment: clockWords(context, context.composedAt, context.timeZone),
        entry: state.seq,
        hash: inEights(state.headHash),
        template: context.templateVersion,
        supersedes: context.supersedes,
      }),
    ),
  ],
})

/** Hexadecimal digits as people compare them. */
const inEights = (digits: string): string => (digits.match(/.{1,8}/g) ?? []).join(' ')
