import type { Mark, OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { clocksDiffer, moment, personalText, type ReportContext, writtenMoment } from './context.ts'
import { words } from './figures.ts'
import { authorName } from './people.ts'

const { people: says } = english.report

/** Who wrote what, and every correction that was made before this report. */
export const peopleSection = (state: OrderState, context: ReportContext): Section => ({
  title: says.title,
  blocks: [
    table(says.recorded, { person: 26, recorded: 74 }, peopleRows(state.marks, context)),
    corrections(state.marks, context),
    ...clocksApart(state.marks, context),
    ...settledLines(state, context),
  ],
})

/** What a clock contradicted and a person settled, with their words. */
const settledLines = (state: OrderState, context: ReportContext): Block[] =>
  state.settledHolds.map(({ hold, words: said, written }) =>
    paragraph(
      says.settled({
        what: settledWords(hold),
        by: authorName(context, written.by),
        moment: writtenMoment(context, written),
        words: personalText(context, said),
      }),
      written.seq,
    ),
  )

const settledWords = (hold: OrderState['holds'][number]): string => {
  if (hold.code === 'drive-minutes-doubtful' && 'values' in hold)
    return says.driveMinutes(hold.values.typed, hold.values.clock)
  return hold.code === 'heard-late' ? says.heardLate(hold.written.seq) : says.otherTime(hold.written.seq)
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
      words(says.kindsOf([...kinds].map(([kind, count]) => ({ kind: says.kinds[kind], count })))),
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
          says.clocks,
          { entry: 34, written: 33, received: 33 },
          apart.map(({ seq, kind, writtenAt, receivedAt }) => ({
            entry: seq,
            cells: [
              words(says.entry(seq, says.kinds[kind])),
              words(moment(context, writtenAt)),
              words(moment(context, receivedAt)),
            ],
          })),
        ),
      ]
}

const corrections = (marks: readonly Mark[], context: ReportContext): Block => {
  const struck = marks.flatMap((mark) => (mark.struck ? [{ mark, struck: mark.struck }] : []))
  if (struck.length === 0) return paragraph(says.noneWithdrawn)
  return table(
    says.withdrawn,
    { entry: 30, because: 34, by: 36 },
    struck.map(({ mark, struck: by }) => ({
      entry: by.seq,
      cells: [
        words(says.entry(mark.seq, says.kinds[mark.kind])),
        words(says.reason(says.reasons[by.reason], by.words && personalText(context, by.words))),
        words(`${authorName(context, by.by)}, ${writtenMoment(context, by)}`),
      ],
    })),
  )
}
