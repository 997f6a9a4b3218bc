import type { Checklist } from '@bayledger/contract/checklist'
import { patterns, shopPath } from '../../../lib/paths.ts'
import { backupItem } from './backup-item.ts'

export type ChecklistItem = {
  readonly key: 'people' | 'instruments' | 'prices' | 'tablet' | 'backups'
  readonly title: string
  readonly isThere: boolean
  /** What is there now. */
  readonly now: string
  /** What stays shut, or is not yet the shop's own, without it. */
  readonly without: string
} & (
  | { readonly path: string; readonly linkWords: string }
  /** Something that is done on the machine itself. */
  | { readonly doWords: string }
)

const counted = (count: number, one: string, many: string): string =>
  count === 0 ? `no ${one}` : `${count} ${count === 1 ? one : many}`

/** What a new shop still needs, from what is there; the first order can be written up before any of it. */
export const checklistItems = (
  { people, instruments, pricesVersion, tablets, backups }: Checklist,
  /** An instant on the shop's clock. */
  shown: (instant: string) => string,
): readonly ChecklistItem[] => [
  {
    key: 'people',
    title: 'People',
    isThere: people.bay >= 2,
    now: `${counted(people.working, 'person', 'people')}, ${counted(people.bay, 'technician or lead with a PIN', 'technicians or leads with a PIN')}`,
    without:
      people.bay === 0
        ? 'Nobody can check, diagnose or work on a vehicle. The arrival check stays shut.'
        : 'Nobody can check the torque of another’s wheel: that takes a second technician or lead with a PIN, who may be you. A vehicle that had a wheel off does not leave.',
    path: shopPath('people'),
    linkWords: 'Add people and set their PINs',
  },
  {
    key: 'instruments',
    title: 'Wrenches and gauges',
    isThere: instruments.wrenches > 0 && instruments.gauges > 0,
    now: `${counted(instruments.wrenches, 'wrench', 'wrenches')} and ${counted(instruments.gauges, 'gauge', 'gauges')} that may be used today`,
    without: withoutInstruments(instruments),
    path: shopPath('instruments'),
    linkWords: 'Add wrenches and gauges',
  },
  {
    key: 'prices',
    title: 'Prices',
    isThere: pricesVersion > 1,
    now:
      pricesVersion > 1
        ? `version ${pricesVersion} of the price book`
        : 'labor and tax are yours; all other prices came with the program, and nobody has saved them yet',
    without: 'Nothing stays shut. Estimates use prices that are not yours.',
    path: shopPath('prices'),
    linkWords: 'Look through the price book and save it',
  },
  {
    key: 'tablet',
    title: 'A tablet',
    isThere: tablets > 0,
    now: counted(tablets, 'tablet', 'tablets'),
    without: 'The desk writes orders up, and the bay records nothing: no check, no work, no report.',
    path: patterns.tablets,
    linkWords: 'Add a tablet',
  },
  backupItem(backups, shown),
]

const withoutInstruments = ({ wrenches, gauges }: Checklist['instruments']): string => {
  const noGauge = 'No pressure is recorded.'
  const noWrench = 'No wheel is torqued, so a vehicle that had a wheel off does not leave.'
  if (wrenches === 0 && gauges === 0) return `${noGauge} ${noWrench}`
  return gauges === 0 ? noGauge : noWrench
}
