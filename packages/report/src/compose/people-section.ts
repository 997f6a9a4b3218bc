import type { Mark, OrderState } from '@bayledger/ledger/state'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { clocksDiffer, moment, personalText, type ReportContext, writtenMoment } from './context.ts'
import { words } from './figures.ts'
import { authorName } from './people.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.people

/** Who wrote what, and every correction that was made before this report. */
export const peopleSection = (state: OrderState, context: ReportContext): Section => ({
  title: says(context).title,
  blocks: [
    table(says(context).recorded, { person: 26, recorded: 74 }, peopleRows(state.marks, context)),
    corrections(state.marks, context),
    ...clocksApart(state.marks, context),
    ...settledLines(state, context),
  ],
})

/** What a clock contradicted and a person settled, with their words. */
const settledLines = (state: OrderState, context: ReportContext): Block[] =>
  state.settledHolds.map(({ hold, words: said, written }) =>
    paragraph(
      says(context).settled({
        what: settledWords(context, hold),
        by: authorName(context, written.by),
        moment: writtenMoment(context, written),
        words: personalText(context, said),
      }),
      written.seq,
    ),
  )

const settledWords = (context: Spoken, hold: OrderState['holds'][number]): string => {
  if (hold.code === 'drive-minutes-doubtful' && 'values' in hold)
    return says(context).driveMinutes(hold.values.typed, hold.values.clock)
  return hold.code === 'heard-late'
    ? says(context).heardLate(hold.written.seq)
    : says(context).otherTime(hold.written.seq)
}

const peopleRows = (marks: readonly Mark[], context: ReportContext): Row[] => {
  const byName = new Map<string, Map<Mark['kind'], number>>()
  for (const { by, kind } of marks) {
    const name = authorName(context, by)
    const kinds = byName.get(name) ?? new Map<Mark['kind'], number>()
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
    byName.set(name, kinds)
  }
  return [...byName].map(([name, kinds]) => ({
    entry: null,
    cells: [
      words(name),
      words(
        says(context).kindsOf(
          [...kinds].map(([kind, count]) => ({ kind: says(context).kinds[kind], count })),
        ),
      ),
    ],
  }))
}

/** Entries of which the device's clock and the server's differ, whatever their kind; nothing where none does. */
const clocksApart = (marks: readonly Mark[], context: ReportContext): Block[] => {
  const apart = marks.flatMap((mark) =>
    clocksDiffer(mark) ? [{ ...mark, receivedAt: mark.receivedAt ?? mark.writtenAt }] : [],
  )
  return apart.length === 0
    ? []
    : [
        table(
          says(context).clocks,
          { entry: 34, written: 33, received: 33 },
          apart.map(({ seq, kind, writtenAt, receivedAt }) => ({
            entry: seq,
            cells: [
              words(says(context).entry(seq, says(context).kinds[kind])),
              words(moment(context, writtenAt)),
              words(moment(context, receivedAt)),
            ],
          })),
        ),
      ]
}

const corrections = (marks: readonly Mark[], context: ReportContext): Block => {
  const struck = marks.flatMap((mark) => (mark.struck ? [{ mark, struck: mark.struck }] : []))
  if (struck.length === 0) return paragraph(says(context).noneWithdrawn)
  return table(
    says(context).withdrawn,
    { entry: 30, because: 34, by: 36 },
    struck.map(({ mark, struck: by }) => ({
      entry: by.seq,
      cells: [
        words(says(context).entry(mark.seq, says(context).kinds[mark.kind])),
        words(
          says(context).reason(says(context).reasons[by.reason], by.words && personalText(context, by.words)),
        ),
        words(`${authorName(context, by.by)}, ${writtenMoment(context, by)}`),
      ],
    })),
  )
}
