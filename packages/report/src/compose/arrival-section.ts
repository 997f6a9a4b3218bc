import { sizeComparedAt, tireAgeSeen } from '@bayledger/ledger/questions/sidewall-seen'
import type { OrderState, TireRecord } from '@bayledger/ledger/state'
import type { SidewallPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import { isAsNamed } from '@bayledger/reckoning/tire/compare-sizes'
import { tireAgeWords } from '@bayledger/reckoning/tire/tire-age'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block, Cell, Row, Section } from '../content.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import {
  gap,
  good,
  listed,
  notChecked,
  number,
  orNotChecked,
  plural,
  sentence,
  temperature,
  words,
} from './figures.ts'
import { authorName } from './people.ts'
import { wheelsOf } from './wheel-lines.ts'

/** The complaint in full, the light as observed, temperatures, damage and photos. */
export const arrivalSection = (state: OrderState, context: ReportContext): Section => ({
  title: 'The vehicle as it came',
  blocks: [
    ...toldBlocks(state, context),
    ...lightBlocks(state, context),
    damageTable(state),
    printTable(state),
    ...otherTires(state),
    ...photoBlocks(state, context),
  ],
})

const toldBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const complaint = state.complaint
  if (!complaint) return [{ kind: 'paragraph', text: 'The complaint was not recorded.', entry: null }]
  const entry = complaint.written.seq
  const happened = complaint.events
    .filter((event) => event.happened !== false)
    .map((event) => {
      const where = event.wheel ? `, ${wheelNames[event.wheel]}` : ''
      const when = typeof event.daysAgo === 'number' ? `, ${plural(event.daysAgo, 'day')} ago` : ''
      return `${event.kind.replaceAll('-', ' ')}${where}${when}`
    })
  const light = complaint.reportedLight
    ? `The warning light, as told: ${english.lights.does[complaint.reportedLight]}.`
    : 'What the warning light did was not asked or not known.'
  const events =
    happened.length === 0 ? 'No recent event was told.' : `Recent events told: ${listed(happened)}.`
  return [
    { kind: 'paragraph', text: `Told: “${personalText(context, complaint.words)}”`, entry },
    { kind: 'paragraph', text: `${light} ${events}`, entry },
  ]
}

const lightBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const seen = state.arrival.telltale
  const around = state.surroundings
  const light = seen
    ? `The warning light, seen by us (${authorName(context, seen.written.by)}, ${writtenMoment(context, seen.written)}): at key-on ${lampWords(seen.lampCheck)}; with the engine running ${seen.behavior ? english.lights.does[seen.behavior] : 'not checked'}.`
    : 'The warning light, seen by us: not checked.'
  const places = around
    ? `Outdoors ${cellText(temperature(around.surroundings.outdoor))}; tires ${around.surroundings.tires.replaceAll('-', ' ')}${around.surroundings.tire ? `, ${cellText(temperature(around.surroundings.tire))}` : ''}; altitude ${number(around.surroundings.altitudeFeet)} ft.`
    : 'Outdoor temperature and state of the tires: not checked.'
  return [
    { kind: 'paragraph', text: light, entry: seen?.written.seq ?? null },
    { kind: 'paragraph', text: places, entry: around?.written.seq ?? null },
  ]
}

const lampWords = (lampCheck: 'lights' | 'dark' | null): string => {
  if (lampCheck === null) return 'not checked'
  return lampCheck === 'lights' ? 'it lights' : 'it stays dark'
}

const cellText = ({ value, unit }: { value: string; unit: string }): string => `${value} ${unit}`

const damageTable = (state: OrderState): Block => ({
  kind: 'table',
  caption: 'Tires, stems and wheels, present on arrival',
  columns: [
    { title: 'Wheel', share: 9 },
    { title: 'Tread', share: 17 },
    { title: 'Stem', share: 27 },
    { title: 'Tire damage', share: 25 },
    { title: 'Fasteners', share: 22 },
  ],
  rows: wheelsOf(state).map((wheel) => tireRow(state, wheel)),
})

const tireRow = (state: OrderState, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      orNotChecked(tire?.treadDepth32nds, (depth) => ({
        kind: 'figure',
        value: `${number(depth)}/32`,
        unit: 'in',
      })),
      stemCell(tire ?? null),
      orNotChecked(tire?.tireDamage, damageCell),
      orNotChecked(tire?.fastenerDamage, damageCell),
    ],
  }
}

/** What the sidewalls say, beside what the sheet has: nobody takes the one for the other. */
const printTable = (state: OrderState): Block => ({
  kind: 'table',
  caption: 'What the tires themselves say',
  columns: [
    { title: 'Wheel', share: 9 },
    { title: 'Size on the tire', share: 25 },
    { title: 'Size by the sheet', share: 23 },
    { title: 'Number or date code', share: 23 },
    { title: 'Tire age', share: 20 },
  ],
  rows: wheelsOf(state).map((wheel) => printRow(state, wheel)),
})

const printRow = (state: OrderState, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      printCell(tire?.sizeSeen),
      orNotChecked(state.sheet?.sheet.tire[axleOf(wheel)], ({ size }) => words(size)),
      printCell(tire?.dateCodeSeen),
      ageCell(tire),
    ],
  }
}

const printCell = (seen: SidewallPrint | undefined): Cell =>
  seen === undefined
    ? notChecked
    : seen.readable
      ? words(seen.text)
      : gap(`not readable: ${english.tirePrints.unread[seen.why]}`)

/** By the date code where one was read, which says whether the decade is known; else as it was entered. */
const ageCell = (tire: OrderState['arrival']['tires'][WheelPosition]): Cell => {
  const age = tire ? tireAgeSeen(tire) : null
  return age
    ? words(tireAgeWords(age))
    : orNotChecked(tire?.tireAgeYears, (years) => words(plural(years, 'year')))
}

/** Tires that are not those of the sheet, each in a sentence. */
const otherTires = (state: OrderState): Block[] =>
  wheelsOf(state).flatMap((wheel): Block[] => {
    const tire = state.arrival.tires[wheel]
    const differs = sizeComparedAt(state, wheel)
    const bySheet = state.sheet?.sheet.tire[axleOf(wheel)]?.size
    if (!differs || isAsNamed(differs) || !tire?.sizeSeen?.readable || bySheet === undefined) return []
    const text = english.tirePrints.otherTire({ wheel, onTire: tire.sizeSeen.text, bySheet, differs })
    return [{ kind: 'paragraph', text, entry: tire.written.seq }]
  })

const stemCell = (tire: TireRecord | null): Cell => {
  const parts = [tire?.valve, tire?.stem].flatMap((part) => (part ? [part] : []))
  if (parts.length === 0) return notChecked
  return tire?.stem === 'sound' ? good(parts.join(', ')) : words(parts.join(', '))
}

const damageCell = (damage: readonly string[]): Cell =>
  damage.length === 0 ? good('none seen') : words(listed(damage.map((name) => name.replaceAll('-', ' '))))

const photoBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const photos = state.photos
  if (photos.length === 0)
    return [{ kind: 'paragraph', text: 'No photo was taken on this order.', entry: null }]
  return [
    {
      kind: 'table',
      caption: 'Photos',
      columns: [
        { title: 'Of', share: 22 },
        { title: 'Taken', share: 34 },
        { title: 'Digest of the file', share: 24 },
        { title: 'File', share: 20 },
      ],
      rows: photos.map(
        (photo): Row => ({
          entry: photo.written.seq,
          cells: [
            words(sentence(photo.wheel ? `${photo.subject}, ${wheelNames[photo.wheel]}` : photo.subject)),
            words(writtenMoment(context, photo.written)),
            { kind: 'id', text: photo.digest.slice(0, 16) },
            context.photosReceived.has(photo.digest) ? words('received') : gap('not received'),
          ],
        }),
      ),
    },
  ]
}
