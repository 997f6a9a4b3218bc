import { doubtedDrives, doubtOf } from '@bayledger/ledger/questions/drive-clock'
import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { durationWords, tookWords } from './clock-words.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { distance, gap, number, words } from './figures.ts'
import { authorName } from './people.ts'
import { fixed } from './verdicts.ts'

const { proof: says } = english.report

/** Relearn, closing light and proof drives. */
export const proofSection = (state: OrderState, context: ReportContext): Section => {
  const { title } = says
  const { word, words: because } = fixed(state)
  const blocks = [
    paragraph(says.verdict(word, because)),
    relearnBlock(state, context),
    lightBlock(state.closing.telltale),
  ]
  if (state.drives.length === 0) return { title, blocks: [...blocks, paragraph(says.noDrive)] }
  return {
    title,
    blocks: [
      ...blocks,
      table(
        says.drives,
        { by: 20, driven: 9, clock: 11, odometerOut: 15, odometerIn: 15, light: 15, key: 15 },
        state.drives.map((drive) => ({
          entry: drive.written.seq,
          cells: [
            words(authorName(context, drive.written.by)),
            { kind: 'figure', value: number(drive.minutes), unit: 'min' },
            drive.timed === null ? gap(says.notTimed) : words(durationWords(drive.timed.seconds)),
            distance(drive.odometerOut),
            distance(drive.odometerIn),
            words(drive.lightAtEnd === 'off' ? says.lightOff : english.lights.does[drive.lightAtEnd]),
            words(says.lamp[drive.lampCheckAfter]),
          ],
        })),
      ),
      ...odometerLines(state),
      ...acrossLines(state),
      ...doubtLines(state),
      ...leftLines(state, context),
    ],
  }
}

const relearnBlock = ({ relearn }: OrderState, context: ReportContext): Block =>
  relearn === null
    ? paragraph(says.noRelearn)
    : paragraph(
        says.relearn({
          method: relearn.method,
          result: relearn.result,
          confirmed: relearn.confirmed.map((wheel) => wheelNames[wheel]),
          took: tookWords(relearn.timed, 'relearn'),
          by: authorName(context, relearn.written.by),
          moment: writtenMoment(context, relearn.written),
        }),
        relearn.written.seq,
      )

const lightBlock = (light: OrderState['closing']['telltale']): Block =>
  light === null
    ? paragraph(says.light(null))
    : paragraph(
        says.light({
          lampCheck: light.lampCheck,
          behavior: light.behavior && english.lights.does[light.behavior],
          took: tookWords(light.timed, 'light'),
        }),
        light.written.seq,
      )

/** A reading that was unlikely is printed as it was read, and that it was read twice. */
const odometerLines = ({ drives }: OrderState): Block[] =>
  drives
    .filter(({ odometerConfirmed }) => odometerConfirmed)
    .map(({ written }) => paragraph(says.odometerReadTwice, written.seq))

/** Which of its clocks a tablet took the time of a drive by, where it was not awake all the time. */
const acrossLines = ({ drives }: OrderState): Block[] =>
  drives
    .filter(({ timed }) => timed?.across !== undefined)
    .map(({ written }) => paragraph(says.slept, written.seq))

/** Minutes that the clock contradicts are printed as they were typed, with what it says, until somebody settles them. */
const doubtLines = (state: OrderState): Block[] =>
  doubtedDrives(state).flatMap(({ written }): Block[] => {
    const doubt = doubtOf(state, written.entryId)
    return doubt === null
      ? []
      : [paragraph(says.doubted(number(doubt.typed), number(doubt.clock)), written.seq)]
  })

/** When each drive began, where somebody recorded that the vehicle left. */
const leftLines = (state: OrderState, context: ReportContext): Block[] =>
  state.drives.flatMap(({ left }): Block[] =>
    left === null
      ? []
      : [paragraph(says.left(authorName(context, left.by), writtenMoment(context, left)), left.seq)],
  )
