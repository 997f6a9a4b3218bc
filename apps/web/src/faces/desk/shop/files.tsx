import { addressOf } from '@bayledger/contract/endpoint'
import { type ExportKind, exports } from '@bayledger/contract/exports'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { sessionQuery } from '../../../features/people/queries.ts'
import { dayIn } from '../../../lib/format.ts'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import { faultOfDays } from './day-range.ts'
import { usePlaces } from './use-places.ts'

const kinds: readonly { readonly value: ExportKind; readonly label: string; readonly detail: string }[] = [
  { value: 'orders', label: 'Orders', detail: 'those opened; customers for a manager or the owner only' },
  { value: 'readings', label: 'Readings', detail: 'pressures and sensors' },
  { value: 'torque', label: 'Torque log', detail: 'every round with its wrench' },
  { value: 'parts', label: 'Parts used', detail: 'with their lots' },
  { value: 'sales', label: 'Sales', detail: 'lines and tax of the orders that ended' },
]
const everywhere = 'all'

/** What the ledger holds of a range of days, as a file for a spreadsheet. */
export function FilesPage() {
  const session = useQuery(sessionQuery)
  const places = usePlaces()
  const clock = useShopClock()
  const today = dayIn(clock.timeZone)
  const [kind, setKind] = useState<ExportKind | null>(null)
  const [from, setFrom] = useState<string | null>(null)
  const [to, setTo] = useState<string | null>(null)
  const [place, setPlace] = useState(everywhere)
  const roles = session.data?.staff.roles ?? []
  const options = kinds.filter(({ value }) => {
    const { access } = exports[value]
    return access.who === 'desk' && access.roles?.some((role) => roles.includes(role))
  })
  const range = { from: from ?? `${today.slice(0, 8)}01`, to: to ?? today }
  const fault = faultOfDays(range)
  return (
    <div className="stack">
      <ChoiceGroup label="What" options={options} value={kind} onChange={setKind} />
      {places === null || places.length < 2 ? null : (
        <ChoiceGroup
          label="At"
          options={[{ value: everywhere, label: 'All places' }, ...places]}
          value={place}
          onChange={setPlace}
        />
      )}
      <div className="row">
        <TextField label="First day" type="date" value={range.from} onChange={setFrom} />
        <TextField label="Last day" type="date" value={range.to} onChange={setTo} fault={fault} />
      </div>
      {kind === null ? (
        <p className="quiet">Choose what the file is of.</p>
      ) : fault === undefined ? (
        <p>
          <a
            href={addressOf(
              exports[kind].path,
              {},
              { ...range, ...(place === everywhere ? {} : { locationId: place }) },
            )}
            download={`${kind}-${range.from}-to-${range.to}.csv`}
          >
            Download {kinds.find(({ value }) => value === kind)?.label.toLowerCase()} as a file (CSV)
          </a>
        </p>
      ) : null}
      <p className="quiet">
        Days are those of each place’s clock. A file that breaks off is not whole: download it again.
      </p>
    </div>
  )
}
