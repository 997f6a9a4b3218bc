import type { Kind } from '@bayledger/ledger/registry'

/** The parts of an order's sheet that the margin links to. */
type SheetPart =
  | 'complaint'
  | 'as-received'
  | 'photos'
  | 'findings'
  | 'estimate'
  | 'work'
  | 'proof'
  | 'report'

/** The part of the sheet that shows a kind of entry. A new kind does not compile until it has one. */
export const partOfKind: Readonly<Record<Kind, SheetPart>> = {
  'order.opened': 'complaint',
  'complaint.recorded': 'complaint',
  'authority.given': 'complaint',
  'sheet.chosen': 'complaint',
  'order.assigned': 'complaint',
  'order.moved': 'complaint',
  'order.refused': 'complaint',
  'order.withdrawn': 'complaint',
  'stay.changed': 'complaint',
  'odometer.read': 'complaint',
  'surroundings.recorded': 'as-received',
  'wheel.checked': 'as-received',
  'tire.inspected': 'as-received',
  'module.read': 'as-received',
  'telltale.observed': 'as-received',
  'photo.attached': 'photos',
  'photo.shared': 'photos',
  'check.skipped': 'as-received',
  'diagnosis.issued': 'findings',
  'diagnosis.confirmed': 'findings',
  'comeback.judged': 'findings',
  'stop.told': 'findings',
  'refusal.recorded': 'findings',
  'estimate.issued': 'estimate',
  'estimate.shown': 'estimate',
  'estimate.decided': 'estimate',
  'plan.issued': 'work',
  'figure.confirmed': 'work',
  'part.promised': 'work',
  'part.drawn': 'work',
  'wheel.removed': 'work',
  'wheel.mounted': 'work',
  'sensor.programmed': 'work',
  'sensor.fitted': 'work',
  'sensor.broken': 'work',
  'sealant.purged': 'work',
  'leak.checked': 'work',
  'pressure.set': 'work',
  'studs.torqued': 'work',
  'torque.checked': 'work',
  'trouble.found': 'work',
  'step.closed': 'work',
  'step.set_aside': 'work',
  'wait.set': 'work',
  'note.added': 'work',
  'contact.made': 'work',
  'hold.settled': 'work',
  'entry.struck': 'work',
  'relearn.done': 'proof',
  'drive.left': 'proof',
  'drive.done': 'proof',
  'payment.noted': 'report',
  'payment.corrected': 'report',
  'report.sealed': 'report',
  'order.handed_back': 'report',
}
