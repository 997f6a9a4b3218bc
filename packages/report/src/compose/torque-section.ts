import { wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import { torqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { OrderState, OvertakenRound, TorqueSeal, WheelWork } from '@bayledger/ledger/state'
import { torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block, Row, Section } from '../content.ts'
import { torqueClockWords } from './clock-words.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { dayWords, gap, listed, number, torque, words } from './figures.ts'
import { authorName } from './people.ts'

const roundWords: Readonly<Record<OvertakenRound['round'], string>> = {
  half: 'about half',
  full: 'full figure',
  again: 'check round',
  check: 'second person',
}

/** Every sealed round of every removed wheel, and the second person's check; for a wheel that stayed on, its rounds only. */
export const torqueSection = (state: OrderState, context: ReportContext): Section => {
  const cameOff = wheelsThatCameOff(state)
  const torqued = readingOrder.filter(
    (wheel) => cameOff.includes(wheel) || roundsOf(state.work[wheel]).length > 0,
  )
  const title = 'Wheel torque'
  if (torqued.length === 0)
    return { title, blocks: [{ kind: 'paragraph', text: 'No wheel came off.', entry: null }] }
  const alone = checkedAlone(state)
  const source = state.sheet?.sheet.sources.studTorque
  const confirmed = state.figures.studTorque
  return {
    title,
    blocks: [
      {
        kind: 'paragraph',
        text: `Figure from: ${source ? `${source.kind.replaceAll('-', ' ')}, ${source.reference}` : 'not recorded'}${confirmed ? `; confirmed on this vehicle: ${confirmed.reference}` : ''}. A click wrench shows that the figure was reached; it measures nothing beyond that. The vehicle maker’s figure governs.`,
        entry: confirmed?.written.seq ?? state.sheet?.written.seq ?? null,
      },
      {
        kind: 'table',
        caption: 'Rounds',
        columns: [
          { title: 'Wheel', share: 8 },
          { title: 'Round', share: 19 },
          { title: 'Set to', share: 15 },
          { title: 'Clicked', share: 14 },
          { title: 'Moved', share: 10 },
          { title: 'Wrench', share: 10 },
          { title: 'Who and when', share: 31 },
        ],
        rows: torqued.flatMap((wheel) => wheelRows(state, context, wheel, cameOff, alone.includes(wheel))),
      },
      ...clockLines(state, cameOff),
      ...aloneLine(state, alone),
      ...wrenchLines(state, torqued),
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
    sealRow(context, state.sheet?.sheet.studs.fastener ?? 'nut', wheel, round, seal)
  const stale = [
    ...(work?.earlierFittings ?? []).map((seal) => ({ seal, why: 'the wheel came off again' })),
    ...(work?.overtaken ?? []).map((seal) => ({ seal, why: 'overtaken' })),
  ].toSorted((one, other) => one.seal.written.seq - other.seal.written.seq)
  if (!cameOff.includes(wheel))
    return [
      ...stale.map(({ seal }) => row('after the miles', seal)),
      ...Object.values(work?.rounds ?? {}).map((seal) => row('after the miles', seal)),
    ]
  return [
    ...stale.map(({ seal, why }) => row(`${roundWords[seal.round]}; ${why}`, seal)),
    ...torqueRounds.map((round) => row(roundWords[round], work?.rounds[round] ?? null)),
    row(isAlone ? 'own check' : roundWords.check, work?.checked ?? null),
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
    const open = gap('not done')
    return { entry: null, cells: [words(wheel), words(round), open, open, open, open, open] }
  }
  return {
    entry: seal.written.seq,
    cells: [
      words(wheel),
      words(round),
      torque(seal.figure),
      words(`${seal.clicked} of ${seal.total} ${fastener}s`),
      words(seal.moved.length === 0 ? 'none' : `${fastener} ${listed(seal.moved.map(String))}`),
      words(seal.wrench.code),
      words(`${authorName(context, seal.written.by)}, ${writtenMoment(context, seal.written)}`),
    ],
  }
}

/** How long the rounds took and when they were checked, for each wheel of which it is known. */
const clockLines = (state: OrderState, cameOff: readonly WheelPosition[]): Block[] =>
  cameOff.flatMap((wheel): Block[] => {
    const said = torqueClockWords(torqueClock(state, wheel))
    const { checked, rounds } = state.work[wheel] ?? {}
    const entry = (checked ?? rounds?.again)?.written.seq ?? null
    return said === null
      ? []
      : [{ kind: 'paragraph', text: `By the tablet’s clock, ${wheelNames[wheel]}: ${said}.`, entry }]
  })

/** Said plainly where nobody else could check a wheel. */
const aloneLine = (state: OrderState, alone: readonly WheelPosition[]): Block[] =>
  alone.length === 0
    ? []
    : [
        {
          kind: 'paragraph',
          text: `No second person was available: whoever torqued the ${listed(alone.map((wheel) => wheelNames[wheel]))} wheel${alone.length === 1 ? '' : 's'} checked it again.`,
          entry: state.work[alone[0] ?? 'SP']?.checked?.written.seq ?? null,
        },
      ]

/** Each wrench once: whether it was within its calibration when it was used. */
const wrenchLines = (state: OrderState, off: readonly WheelPosition[]): Block[] => {
  const seals = off.flatMap((wheel) => roundsOf(state.work[wheel]))
  const first = new Map(seals.map((seal) => [seal.wrench.code, seal] as const).reverse())
  return [...first.values()].map(({ wrench, written }) => ({
    kind: 'paragraph',
    text: `Wrench ${wrench.code}: calibration due ${dayWords(wrench.dueOn)}, ${number(wrench.cyclesBefore)} clicks before this use, range ${number(wrench.rangeLow)} to ${number(wrench.rangeHigh)} ${wrench.rangeUnit}.`,
    entry: written.seq,
  }))
}
