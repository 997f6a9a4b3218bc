import type { Mark, OrderState } from '@bayledger/ledger/state'
import type { Block, Row, Section } from '../content.ts'
import { clocksDiffer, moment, personalText, type ReportContext, writtenMoment } from './context.ts'
import { listed, words } from './figures.ts'
import { authorName } from './people.ts'

/** Who wrote what, and every correction that was made before this report. */
export const peopleSection = (state: OrderState, context: ReportContext): Section => ({
  title: 'People and corrections',
  blocks: [
    {
      kind: 'table',
      caption: 'Who recorded what',
      columns: [
        { title: 'Person', share: 26 },
        { title: 'Recorded', share: 74 },
      ],
      rows: peopleRows(state.marks, context),
    },
    corrections(state.marks, context),
    ...clocksApart(state.marks, context),
    ...settledLines(state, context),
  ],
})

/** What a clock contradicted and a person settled, with their words. */
const settledLines = (state: OrderState, context: ReportContext): Block[] =>
  state.settledHolds.map(({ hold, words: said, written }) => ({
    kind: 'paragraph',
    text: `${settledWords(hold)} Settled by ${authorName(context, written.by)}, ${writtenMoment(context, written)}: “${personalText(context, said)}”.`,
    entry: written.seq,
  }))

const settledWords = (hold: OrderState['holds'][number]): string => {
  if (hold.code === 'drive-minutes-doubtful' && 'values' in hold)
    return `${hold.values.typed} min were written down for a drive for which the clock has ${hold.values.clock} min; they count as written down.`
  return `The device that wrote entry ${hold.written.seq} had another time than the server.`
}

const peopleRows = (marks: readonly Mark[], context: ReportContext): Row[] => {
  const byName = new Map<string, Map<string, number>>()
  for (const { by, kind } of marks) {
    const name = authorName(context, by)
    const kinds = byName.get(name) ?? new Map<string, number>()
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
    byName.set(name, kinds)
  }
  return [...byName].map(([name, kinds]) => ({
    entry: null,
    cells: [
      words(name),
      words(
        listed(
          [...kinds].map(([kind, count]) =>
            count === 1 ? kindWords(kind) : `${kindWords(kind)} (${count})`,
          ),
        ),
      ),
    ],
  }))
}

/** "torque.checked" is "torque checked"; what customers call otherwise is said in their words. */
const kindWords = (kind: string): string => ownWords[kind] ?? kind.replaceAll('.', ' ').replaceAll('_', ' ')

const ownWords: Readonly<Record<string, string>> = {
  'telltale.observed': 'warning light observed',
  'module.read': 'stored IDs and codes read',
  'studs.torqued': 'wheel torqued',
  'diagnosis.issued': 'findings issued',
  'diagnosis.confirmed': 'findings confirmed',
}

/** Entries of which the device's clock and the server's differ, whatever their kind; nothing where none does. */
const clocksApart = (marks: readonly Mark[], context: ReportContext): Block[] => {
  const apart = marks.flatMap((mark) =>
    clocksDiffer(mark) ? [{ ...mark, receivedAt: mark.receivedAt ?? mark.writtenAt }] : [],
  )
  return apart.length === 0
    ? []
    : [
        {
          kind: 'table',
          caption: 'Entries whose device showed another time than the shop’s server, which received them',
          columns: [
            { title: 'Entry', share: 34 },
            { title: 'Written, by the device', share: 33 },
            { title: 'Received, by the server', share: 33 },
          ],
          rows: apart.map(({ seq, kind, writtenAt, receivedAt }) => ({
            entry: seq,
            cells: [
              words(`${seq}, ${kindWords(kind)}`),
              words(moment(context, writtenAt)),
              words(moment(context, receivedAt)),
            ],
          })),
        },
      ]
}

const corrections = (marks: readonly Mark[], context: ReportContext): Block => {
  const struck = marks.flatMap((mark) => (mark.struck ? [{ mark, struck: mark.struck }] : []))
  if (struck.length === 0)
    return { kind: 'paragraph', text: 'No entry was withdrawn before this report.', entry: null }
  return {
    kind: 'table',
    caption: 'Entries withdrawn before this report; they stay in the ledger',
    columns: [
      { title: 'Entry', share: 30 },
      { title: 'Withdrawn because', share: 34 },
      { title: 'By and when', share: 36 },
    ],
    rows: struck.map(({ mark, struck: by }) => ({
      entry: by.seq,
      cells: [
        words(`${mark.seq}, ${kindWords(mark.kind)}`),
        words(`${by.reason.replaceAll('-', ' ')}${by.words ? `: ${personalText(context, by.words)}` : ''}`),
        words(`${authorName(context, by.by)}, ${writtenMoment(context, by)}`),
      ],
    })),
  }
}
