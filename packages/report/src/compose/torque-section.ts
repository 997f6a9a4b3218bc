import { wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import { torqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { OrderState, TorqueSeal, WheelWork } from '@bayledger/ledger/state'
import { studsOf } from '@bayledger/reckoning/sheet'
import { torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { torqueClockWords } from './clock-words.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { figureRead } from './figure-read.ts'
import { dayWords, gap, number, torque, words } from './figures.ts'
import { authorName } from './people.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.torque

/** Every sealed round of every removed wheel, and the second person's check; for a wheel that stayed on, its rounds only. */
export const torqueSection = (state: OrderState, context: ReportContext): Section => {
  const cameOff = wheelsThatCameOff(state)
  const torqued = readingOrder.filter(
    (wheel) => cameOff.includes(wheel) || roundsOf(state.work[wheel]).length > 0,
  )
  const { title } = says(context)
  if (torqued.length === 0) return { title, blocks: [paragraph(says(context).noWheelOff)] }
  const alone = checkedAlone(state)
  const { read, entry } = figureRead(state, context, 'studTorque')
  return {
    title,
    blocks: [
      paragraph(says(context).figure(read), entry),
      table(
        says(context).rounds,
        { wheel: 8, round: 19, setTo: 15, clicked: 14, moved: 10, wrench: 10, who: 31 },
        torqued.flatMap((wheel) => wheelRows(state, context, wheel, cameOff, alone.includes(wheel))),
      ),
      ...clockLines(state, context, cameOff),
      ...aloneLine(state, context, alone),
      ...wrenchLines(state, context, torqued),
    ],
  }
}

/**
 * The rounds of a wheel in the order of their sealing: those that no longer count, with the reason, then those that do. A
 * wheel that came off shows what is missing; one that stayed on was only looked at again.
 */
const wheelRows = (
  state: OrderState,
  context: ReportContext,
  wheel: WheelPosition,
  cameOff: readonly WheelPosition[],
  isAlone: boolean,
): Row[] => {
  const work = state.work[wheel]
  const row = (round: string, seal: TorqueSeal | null) =>
    sealRow(context, studsOf(state.sheet?.sheet)?.fastener ?? 'nut', wheel, round, seal)
  const stale = [
    ...(work?.earlierFittings ?? []).map((seal) => ({ seal, why: 'came-off-again' as const })),
    ...(work?.overtaken ?? []).map((seal) => ({ seal, why: 'overtaken' as const })),
  ].toSorted((one, other) => one.seal.written.seq - other.seal.written.seq)
  if (!cameOff.includes(wheel))
    return [
      ...stale.map(({ seal }) => row(says(context).round['after-miles'], seal)),
      ...Object.values(work?.rounds ?? {}).map((seal) => row(says(context).round['after-miles'], seal)),
    ]
  return [
    ...stale.map(({ seal, why }) => row(says(context).stale(says(context).round[seal.round], why), seal)),
    ...torqueRounds.map((round) => row(says(context).round[round], work?.rounds[round] ?? null)),
    row(says(context).round[isAlone ? 'own-check' : 'check'], work?.checked ?? null),
  ]
}

/** Every sealed round of a wheel, whether it still counts or not. */
const roundsOf = (work: WheelWork | undefined): TorqueSeal[] => [
  ...(work?.earlierFittings ?? []),
  ...(work?.overtaken ?? []),
  ...Object.values(work?.rounds ?? {}),
  ...(work?.checked ? [work.checked] : []),
]

const sealRow = (
  context: ReportContext,
  fastener: 'nut' | 'bolt',
  wheel: WheelPosition,
  round: string,
  seal: TorqueSeal | null,
): Row => {
  if (!seal) {
    const open = gap(says(context).notDone)
    return { entry: null, cells: [words(wheel), words(round), open, open, open, open, open] }
  }
  return {
    entry: seal.written.seq,
    cells: [
      words(wheel),
      words(round),
      torque(seal.figure),
      words(says(context).clicked(seal.clicked, seal.total, fastener)),
      words(says(context).moved(seal.moved, fastener)),
      words(seal.wrench.code),
      words(`${authorName(context, seal.written.by)}, ${writtenMoment(context, seal.written)}`),
    ],
  }
}

/** How long the rounds took and when they were checked, for each wheel of which it is known. */
const clockLines = (state: OrderState, context: Spoken, cameOff: readonly WheelPosition[]): Block[] =>
  cameOff.flatMap((wheel): Block[] => {
    const said = torqueClockWords(context, torqueClock(state, wheel))
    const { checked, rounds } = state.work[wheel] ?? {}
    const entry = (checked ?? rounds?.again)?.written.seq ?? null
    return said === null
      ? []
      : [paragraph(says(context).byTheClock(context.language.wheels.names[wheel], said), entry)]
  })

/** Said plainly where nobody else could check a wheel. */
const aloneLine = (state: OrderState, context: Spoken, alone: readonly WheelPosition[]): Block[] =>
  alone.length === 0
    ? []
    : [
        paragraph(
          says(context).checkedAlone(alone.map((wheel) => context.language.wheels.names[wheel])),
          state.work[alone[0] ?? 'SP']?.checked?.written.seq ?? null,
        ),
      ]

/** Each wrench once: whether it was within its calibration when it was used. */
const wrenchLines = (state: OrderState, context: Spoken, off: readonly WheelPosition[]): Block[] => {
  const seals = off.flatMap((wheel) => roundsOf(state.work[wheel]))
  const first = new Map(seals.map((seal) => [seal.wrench.code, seal] as const).reverse())
  return [...first.values()].map(({ wrench, written }) =>
    paragraph(
      says(context).wrench({
        code: wrench.code,
        dueOn: dayWords(context, wrench.dueOn),
        clicks: number(wrench.cyclesBefore),
        low: number(wrench.rangeLow),
        high: number(wrench.rangeHigh),
        unit: wrench.rangeUnit,
      }),
      written.seq,
    ),
  )
}
