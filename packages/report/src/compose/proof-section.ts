import { doubtedDrives, doubtOf } from '@bayledger/ledger/questions/drive-clock'
import type { OrderState } from '@bayledger/ledger/state'
import type { Block, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { durationWords, tookWords } from './clock-words.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { distance, gap, number, words } from './figures.ts'
import { authorName } from './people.ts'
import type { Spoken } from './spoken.ts'
import { fixed } from './verdicts.ts'

const says = ({ language }: Spoken) => language.report.proof

/** Relearn, closing light and proof drives. */
export const proofSection = (state: OrderState, context: ReportContext): Section => {
  const { title } = says(context)
  const { word, words: because } = fixed(state, context)
  const blocks = [
    paragraph(says(context).verdict(word, because)),
    relearnBlock(state, context),
    lightBlock(context, state.closing.telltale),
  ]
  if (state.drives.length === 0) return { title, blocks: [...blocks, paragraph(says(context).noDrive)] }
  return {
    title,
    blocks: [
      ...blocks,
      table(
        says(context).drives,
        { by: 20, driven: 9, clock: 11, odometerOut: 15, odometerIn: 15, light: 15, key: 15 },
        state.drives.map((drive) => ({
          entry: drive.written.seq,
          cells: [
            words(authorName(context, drive.written.by)),
            { kind: 'figure', value: number(drive.minutes), unit: 'min' },
            drive.timed === null ? gap(says(context).notTimed) : words(durationWords(drive.timed.seconds)),
            distance(drive.odometerOut),
            distance(drive.odometerIn),
            words(
              drive.lightAtEnd === 'off'
                ? says(context).lightOff
                : context.language.lights.does[drive.lightAtEnd],
            ),
            words(says(context).lamp[drive.lampCheckAfter]),
          ],
        })),
      ),
      ...odometerLines(context, state),
      ...acrossLines(context, state),
      ...doubtLines(state, context),
      ...leftLines(state, context),
    ],
  }
}

const relearnBlock = ({ relearn }: OrderState, context: ReportContext): Block =>
  relearn === null
    ? paragraph(says(context).noRelearn)
    : paragraph(
        says(context).relearn({
          method: relearn.method,
          result: relearn.result,
          confirmed: relearn.confirmed.map((wheel) => context.language.wheels.names[wheel]),
          took: tookWords(context, relearn.timed, 'relearn'),
          by: authorName(context, relearn.written.by),
          moment: writtenMoment(context, relearn.written),
        }),
        relearn.written.seq,
      )

const lightBlock = (context: Spoken, light: OrderState['closing']['telltale']): Block =>
  light === null
    ? paragraph(says(context).light(null))
    : paragraph(
        says(context).light({
          lampCheck: light.lampCheck,
          behavior: light.behavior && context.language.lights.does[light.behavior],
          took: tookWords(context, light.timed, 'light'),
        }),
        light.written.seq,
      )

/** A reading that was unlikely is printed as it was read, and that it was read twice. */
const odometerLines = (context: Spoken, { drives }: OrderState): Block[] =>
  drives
    .filter(({ odometerConfirmed }) => odometerConfirmed)
    .map(({ written }) => paragraph(says(context).odometerReadTwice, written.seq))

/** Which of its clocks a tablet took the time of a drive by, where it was not awake all the time. */
const acrossLines = (context: Spoken, { drives }: OrderState): Block[] =>
  drives
    .filter(({ timed }) => timed?.across !== undefined)
    .map(({ written }) => paragraph(says(context).slept, written.seq))

/** Minutes that the clock contradicts are printed as they were typed, with what it says, until somebody settles them. */
const doubtLines = (state: OrderState, context: Spoken): Block[] =>
  doubtedDrives(state).flatMap(({ written }): Block[] => {
    const doubt = doubtOf(state, written.entryId)
    return doubt === null
      ? []
      : [paragraph(says(context).doubted(number(doubt.typed), number(doubt.clock)), written.seq)]
  })

/** When each drive began, where somebody recorded that the vehicle left. */
const leftLines = (state: OrderState, context: ReportContext): Block[] =>
  state.drives.flatMap(({ left }): Block[] =>
    left === null
      ? []
      : [paragraph(says(context).left(authorName(context, left.by), writtenMoment(context, left)), left.seq)],
  )
