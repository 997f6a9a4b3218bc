import type { Foldable } from '@bayledger/ledger/fold/foldable'
import type { Kind } from '@bayledger/ledger/registry'
import { pressureText } from '../../lib/format.ts'

const words: Readonly<Record<Kind, string>> = {
  'order.opened': 'Order opened',
  'complaint.recorded': 'Complaint',
  'authority.given': 'Consent',
  'sheet.chosen': 'Specification sheet',
  'surroundings.recorded': 'Temperatures',
  'order.assigned': 'Assigned',
  'wait.set': 'Waiting set',
  'note.added': 'Note',
  'stay.changed': 'Stay changed',
  'odometer.read': 'Odometer',
  'order.moved': 'Moved to another place',
  'wheel.checked': 'Wheel read',
  'tire.inspected': 'Tire inspected',
  'module.read': 'Stored IDs and codes',
  'telltale.observed': 'Warning light',
  'photo.attached': 'Photo',
  'photo.shared': 'Photo shown to the customer',
  'diagnosis.issued': 'Findings',
  'diagnosis.confirmed': 'Findings confirmed',
  'comeback.judged': 'Cause of the comeback',
  'stop.told': 'Customer told of a danger',
  'contact.made': 'Customer contacted',
  'estimate.issued': 'Estimate',
  'estimate.shown': 'Estimate shown',
  'estimate.decided': 'Customer decided',
  'refusal.recorded': 'Refusal',
  'payment.noted': 'Payment',
  'payment.corrected': 'Payment corrected',
  'plan.issued': 'Job plan',
  'figure.confirmed': 'Figure confirmed',
  'part.promised': 'Part promised',
  'part.drawn': 'Part drawn',
  'wheel.removed': 'Wheel off',
  'wheel.mounted': 'Wheel on',
  'sensor.programmed': 'Sensor programmed',
  'sensor.fitted': 'Sensor fitted',
  'sealant.purged': 'Sealant gas purged',
  'sensor.broken': 'Sensor broken in our hands',
  'leak.checked': 'Leak check',
  'pressure.set': 'Pressure set',
  'studs.torqued': 'Torque round',
  'torque.checked': 'Second check',
  'relearn.done': 'Relearn',
  'drive.left': 'Left for the proof drive',
  'drive.done': 'Proof drive',
  'step.closed': 'Step done',
  'check.skipped': 'Check skipped',
  'trouble.found': 'Not right',
  'step.set_aside': 'Step set aside',
  'report.sealed': 'Report sealed',
  'order.handed_back': 'Handed back',
  'order.refused': 'Declined by the shop',
  'order.withdrawn': 'Order withdrawn',
  'hold.settled': 'Time settled',
  'entry.struck': 'Withdrawn',
}

/** How screens name a kind of entry; one that this screen does not know keeps its own name. */
export const kindWords = (kind: string): string => words[kind as Kind] ?? kind

/** One line of the ledger in few words: "Wheel read, LF: 24.5 psi". */
export const entryWords = (entry: Foldable): string => {
  const { payload } = entry
  const wheel = 'wheel' in payload && payload.wheel ? `, ${payload.wheel}` : ''
  const detail =
    entry.kind === 'wheel.checked'
      ? [
          entry.payload.gauge
            ? `${pressureText(entry.payload.gauge.pressure)} ${entry.payload.gauge.pressure.unit}`
            : '',
          entry.payload.sensor ? `sensor ${entry.payload.sensor.answer.replace('-', ' ')}` : '',
          ...entry.payload.notPossible.map(({ why }) => `not possible, ${why}`),
        ]
          .filter(Boolean)
          .join(', ')
      : entry.kind === 'pressure.set'
        ? `${pressureText(entry.payload.asLeft)} ${entry.payload.asLeft.unit}`
        : entry.kind === 'studs.torqued'
          ? `${entry.payload.round}, ${entry.payload.figure.value} ${entry.payload.figure.unit}`
          : ''
  return `${words[entry.kind]}${wheel}${detail === '' ? '' : `: ${detail}`}`
}
