import type { TextsContent } from '@bayledger/contract/texts'
import { type MessageAbout, messagesAbout } from '@bayledger/ledger/message-template'
import { maybeTextCell, textCell } from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'

/** What a file of the shop's own texts holds, one text a row; empty words are of a text that the shop does not have. */
export const textColumns = { text: textCell(40), words: maybeTextCell(600) }
export type TextRow = RowOf<typeof textColumns>

const messageNames = messagesAbout.flatMap((about) => [`message_${about}_en`, `message_${about}_es`] as const)
const lineNames = ['line_1', 'line_2', 'line_3', 'line_4'] as const
export const textNames = [
  ...lineNames,
  'telephone',
  'report_footer',
  'cautions',
  ...messageNames,
  'quiet_hours',
  'warranty_labor_months',
  'warranty_sensor_months',
  'warranty_sensor_miles',
] as const

/** The texts as rows, all of them; `textsOfRows` is the way back. */
export const rowsOfTexts = (texts: TextsContent): TextRow[] => {
  const words: Readonly<Record<(typeof textNames)[number], string | null | undefined>> = {
    line_1: texts.lines[0],
    line_2: texts.lines[1],
    line_3: texts.lines[2],
    line_4: texts.lines[3],
    telephone: texts.telephone,
    report_footer: texts.reportFooter,
    cautions: texts.cautions,
    message_estimate_en: texts.messages.estimate.en,
    message_estimate_es: texts.messages.estimate.es,
    message_report_en: texts.messages.report.en,
    message_report_es: texts.messages.report.es,
    message_retorque_en: texts.messages.retorque.en,
    message_retorque_es: texts.messages.retorque.es,
    message_deferred_en: texts.messages.deferred.en,
    message_deferred_es: texts.messages.deferred.es,
    quiet_hours: texts.quietHours,
    warranty_labor_months: String(texts.warranty.laborMonths),
    warranty_sensor_months: String(texts.warranty.sensorMonths),
    warranty_sensor_miles: texts.warranty.sensorMiles === null ? null : String(texts.warranty.sensorMiles),
  }
  return textNames.map((text) => ({ text, words: words[text] ?? '' }))
}

/** The texts with some rows in them. A line that is empty is none, and those after it move up. */
export const textsOfRows = (texts: TextsContent, rows: readonly TextRow[]): TextsContent => {
  const words = new Map(
    [...rowsOfTexts(texts), ...rows].map((row) => [row.text.toLowerCase(), row.words] as const),
  )
  const orNone = (text: (typeof textNames)[number]) => words.get(text) || null
  const messageOf = (about: MessageAbout) => ({
    en: orNone(`message_${about}_en`),
    es: orNone(`message_${about}_es`),
  })
  return {
    lines: lineNames.map((text) => words.get(text) ?? '').filter((one) => one !== ''),
    telephone: orNone('telephone'),
    reportFooter: orNone('report_footer'),
    cautions: orNone('cautions'),
    messages: {
      estimate: messageOf('estimate'),
      report: messageOf('report'),
      retorque: messageOf('retorque'),
      deferred: messageOf('deferred'),
    },
    quietHours: orNone('quiet_hours'),
    warranty: {
      laborMonths: Number(orNone('warranty_labor_months') ?? Number.NaN),
      sensorMonths: Number(orNone('warranty_sensor_months') ?? Number.NaN),
      sensorMiles: orNone('warranty_sensor_miles') === null ? null : Number(orNone('warranty_sensor_miles')),
    },
  }
}
