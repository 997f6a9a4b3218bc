import type { TabletContent, TabletFacts } from '@bayledger/contract/tablets'
import { type Clock, clockTimeOrDay } from '../../../lib/format.ts'
import type { Kept } from '../../../lib/record-source.ts'
import { type RecordRow, textIn, yesNo, yesNoRow } from '../../../ui/record/record-rows.ts'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'

export const tabletRows =
  (places: readonly RowOption[]) =>
  (values: RowValues): readonly RecordRow[] => [
    { kind: 'text', key: 'name', label: 'Name', most: 40 },
    { kind: 'choice', key: 'locationId', label: 'Place', options: places },
    {
      ...yesNoRow('isOut', 'May it be used', {
        yes: 'no, put it out at once, with everyone who is signed in on it',
        no: 'yes',
      }),
      ...(values.isOut === 'yes'
        ? {
            hint: 'It stays out: to use it again, enroll it with a new code. What was tapped on it comes to the tray.',
          }
        : {}),
    },
  ]

export const tabletValues = ({ name, locationId, isOut }: TabletContent): RowValues => ({
  name,
  locationId,
  isOut: yesNo(isOut),
})

export const tabletContent = (values: RowValues): TabletContent => ({
  name: textIn(values, 'name'),
  locationId: textIn(values, 'locationId'),
  isOut: textIn(values, 'isOut') === 'yes',
})

/** The line of the list: place, when it was last seen, and what may still come from it. */
export const tabletLine = (
  { content, facts }: Kept<TabletContent, TabletFacts>,
  places: readonly RowOption[],
  now: string,
  clock: Clock,
): string => {
  const { lastSeenAt, heldOrders, refusedEntries, unsent } = facts
  return [
    places.find(({ value }) => value === content.locationId)?.label ?? 'a place that is not known',
    content.isOut ? 'put out' : null,
    lastSeenAt === null
      ? 'nobody has signed in on it'
      : `last seen ${clockTimeOrDay(lastSeenAt, now, clock)}`,
    unsent === null ? null : unsentWords(unsent, now, clock),
    heldOrders === 0
      ? null
      : `holds ${heldOrders} open ${heldOrders === 1 ? 'order' : 'orders'}, to which it may still write`,
    refusedEntries === 0
      ? null
      : `${refusedEntries} refused ${refusedEntries === 1 ? 'entry waits' : 'entries wait'} in the tray`,
  ]
    .filter((part) => part !== null)
    .join(' · ')
}

const counted = (count: number, one: string, several: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : several}`]

/** What a tablet said at its last contact: it may have written more since. */
const unsentWords = (
  { entries, photos, toldAt }: NonNullable<TabletFacts['unsent']>,
  now: string,
  clock: Clock,
): string => {
  const kept = [...counted(entries, 'entry', 'entries'), ...counted(photos, 'photo', 'photos')]
  const what = kept.length === 0 ? 'nothing waited on it' : `${kept.join(' and ')} waited on it`
  return `${what} at its last contact, ${clockTimeOrDay(toldAt, now, clock)}`
}
