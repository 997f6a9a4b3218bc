import { useQuery } from '@tanstack/react-query'
import { settingsQuery } from '../../../features/settings/queries.ts'
import type { RowOption } from '../../../ui/rows/rows.ts'

/** The shop's places, to choose one of them in a row; `null` while they are read, when no row can be judged. */
export const usePlaces = (): readonly RowOption[] | null => {
  const settings = useQuery(settingsQuery)
  return settings.data === undefined
    ? null
    : settings.data.locations.map(({ locationId, name }) => ({ value: locationId, label: name }))
}
