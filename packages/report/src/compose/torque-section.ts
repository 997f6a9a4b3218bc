import { wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import { checkedAlone } from '@bayledger/ledger/questions/sole-worker'
import type { OrderState, TorqueSeal, WheelWork } from '@bayledger/ledger/state'
import { type TorqueRound, torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import { readingOrder, type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import type { Block, Row, Section } from '../content.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { dayWords, gap, listed, number, torque, words } from './figures.ts'
import { authorName } from './people.ts'

const roundWords: Readonly<Record<TorqueRound, string>> = {
  half: 'about half',
  full: 'full figure',
  again: 'check round',
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
          { title: 'Round', share: 16 },
          { title: 'Set to', share: 16 },
          { title: 'Clicked', share: 12 },
          { title: 'Moved', share: 11 },
          { title: 'Wrench', share: 11 },
          { title: 'Who and when', share: 33 },
        ],
        rows: torqued.flatMap((wheel) =>
          cameOff.includes(wheel)
            ? roundRows(context, wheel, state.work[wheel], alone.includes(wheel))
            : torquedAgainRows(context, wheel, state.work[wheel]),
        ),
      },
      ...aloneLine(state, alone),
      ...wrenchLines(state, torqued),
    ],
  }
}

const roundRows = (
  context: ReportContext,
  wheel: WheelPosition,
  work: WheelWork | undefined,
  isAlone: boolean,
): Row[] => [
  ...torqueRounds.map((round) => sealRow(context, wheel, roundWords[round], work?.rounds[round] ?? null)),
  sealRow(context, wheel, isAlone ? 'own check' : 'second person', work?.checked ?? null),
]

/** A wheel that stayed on: what was looked at again, and nothing is missing. */
const torquedAgainRows = (context: ReportContext, wheel: WheelPosition, work: WheelWork | undefined): Row[] =>
  roundsOf(work).map((seal) => sealRow(context, wheel, 'after the miles', seal))

/** The rounds that a moved nut made invalid, and the valid ones. */
const roundsOf = (work: WheelWork | undefined): TorqueSeal[] => [
  ...(work?.overtaken ?? []),
  ...Object.values(work?.rounds ?? {}),
]

const sealRow = (
  context: ReportContext,
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
      words(`${seal.clicked} of ${seal.total}`),
      words(seal.moved.length === 0 ? 'none' : `nut ${listed(seal.moved.map(String))}`),
      words(seal.wrench.code),
      words(`${authorName(context, seal.written.by)}, ${writtenMoment(context, seal.written)}`),
    ],
  }
}

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
  const seals = off.flatMap((wheel) => {
    const work = state.work[wheel]
    return [...Object.values(work?.rounds ?? {}), ...(work?.checked ? [work.checked] : [])]
  })
  const first = new Map(seals.map((seal) => [seal.wrench.code, seal] as const).reverse())
  return [...first.values()].map(({ wrench, written }) => ({
    kind: 'paragraph',
    text: `Wrench ${wrench.code}: calibration due ${dayWords(wrench.dueOn)}, ${number(wrench.cyclesBefore)} clicks before this use, range ${number(wrench.rangeLow)} to ${number(wrench.rangeHigh)} ${wrench.rangeUnit}.`,
    entry: written.seq,
  }))
}
