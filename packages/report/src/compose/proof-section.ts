import { doubtedDrives, doubtOf } from '@bayledger/ledger/questions/drive-clock'
import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block, Section } from '../content.ts'
import { durationWords, tookWords } from './clock-words.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { distance, gap, listed, number, words } from './figures.ts'
import { authorName } from './people.ts'
import { fixed } from './verdicts.ts'

const methods = {
  automatic: 'automatic: the vehicle learns while it is driven',
  stationary: 'stationary: each wheel triggered in turn',
  connector: 'IDs sent through the diagnostic connector',
  reset: 'reset',
} as const

const results = {
  learned: 'accepted by the vehicle',
  refused: 'refused by the vehicle',
  'learns-while-driven': 'the vehicle learns while it is driven',
} as const

const lamp = {
  'lights-and-goes-out': 'lit at key-on and went out',
  'stays-lit': 'stayed lit',
  dark: 'stayed dark at key-on',
} as const

/** Relearn, closing light and proof drives. */
export const proofSection = (state: OrderState, context: ReportContext): Section => {
  const verdict = fixed(state)
  const relearn = state.relearn
  const light = state.closing.telltale
  const blocks: Block[] = [
    { kind: 'paragraph', text: `${verdict.word}: ${verdict.words}.`, entry: null },
    {
      kind: 'paragraph',
      text: relearn
        ? `Relearn: ${methods[relearn.method]}; ${results[relearn.result]}; positions confirmed: ${confirmedWords(relearn.confirmed)}${tookWords(relearn.timed, 'it took')}. ${authorName(context, relearn.written.by)}, ${writtenMoment(context, relearn.written)}.`
        : 'Relearn: none recorded.',
      entry: relearn?.written.seq ?? null,
    },
    {
      kind: 'paragraph',
      text: light
        ? `The warning light at the closing check: at key-on ${light.lampCheck === null ? 'not checked' : light.lampCheck === 'lights' ? 'it lights' : 'it stays dark'}; with the engine running ${light.behavior ? english.lights.does[light.behavior] : 'not checked'}${tookWords(light.timed, 'watched for')}.`
        : 'The warning light at the closing check: not checked.',
      entry: light?.written.seq ?? null,
    },
  ]
  if (state.drives.length === 0)
    return {
      title: 'Relearn and proof',
      blocks: [...blocks, { kind: 'paragraph', text: 'Proof drive: none recorded.', entry: null }],
    }
  return {
    title: 'Relearn and proof',
    blocks: [
      ...blocks,
      {
        kind: 'table',
        caption: 'Proof drive',
        columns: [
          { title: 'Driven by', share: 20 },
          { title: 'Driven', share: 9 },
          { title: 'By the clock', share: 11 },
          { title: 'Odometer at its start', share: 15 },
          { title: 'Odometer at its end', share: 15 },
          { title: 'Light at the end', share: 15 },
          { title: 'Key off, key on', share: 15 },
        ],
        rows: state.drives.map((drive) => ({
          entry: drive.written.seq,
          cells: [
            words(authorName(context, drive.written.by)),
            { kind: 'figure', value: number(drive.minutes), unit: 'min' },
            drive.timed === null ? gap('not timed') : words(durationWords(drive.timed.seconds)),
            distance(drive.odometerOut),
            distance(drive.odometerIn),
            words(drive.lightAtEnd === 'off' ? 'off' : english.lights.does[drive.lightAtEnd]),
            words(lamp[drive.lampCheckAfter]),
          ],
        })),
      },
      ...odometerLines(state),
      ...doubtLines(state),
      ...leftLines(state, context),
    ],
  }
}

/** A reading that was unlikely is printed as it was read, and that it was read twice. */
const odometerLines = ({ drives }: OrderState): Block[] =>
  drives
    .filter(({ odometerConfirmed }) => odometerConfirmed)
    .map(({ written }) => ({
      kind: 'paragraph',
      text: 'The odometer of this drive was unlikely beside what it read before. It was read a second time.',
      entry: written.seq,
    }))

/** Minutes that the clock contradicts are printed as they were typed, with what it says, until somebody settles them. */
const doubtLines = (state: OrderState): Block[] =>
  doubtedDrives(state).flatMap(({ written }): Block[] => {
    const doubt = doubtOf(state, written.entryId)
    return doubt === null
      ? []
      : [
          {
            kind: 'paragraph',
            text: `${number(doubt.typed)} min were written down for this drive; the clock has time for ${number(doubt.clock)}. The minutes do not count for the proof.`,
            entry: written.seq,
          },
        ]
  })

/** When each drive began, where somebody recorded that the vehicle left. */
const leftLines = (state: OrderState, context: ReportContext): Block[] =>
  state.drives.flatMap(({ left }): Block[] =>
    left === null
      ? []
      : [
          {
            kind: 'paragraph',
            text: `The vehicle left for the drive: ${authorName(context, left.by)}, ${writtenMoment(context, left)}.`,
            entry: left.seq,
          },
        ],
  )

const confirmedWords = (confirmed: readonly WheelPosition[]): string =>
  confirmed.length === 0 ? 'none' : listed(confirmed.map((wheel) => wheelNames[wheel]))
