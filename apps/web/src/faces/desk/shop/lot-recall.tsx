import { type RecalledPart, type RecalledVehicle, recallLot } from '@bayledger/contract/stock'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { type Clock, day } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'

/** A maker calls a lot back: which vehicles have a part of it, whom to call, and what may still lie on a shelf. */
export function LotRecallPage() {
  const [typed, setTyped] = useState('')
  const [lot, setLot] = useState('')
  const clock = useShopClock()
  const found = useQuery({
    queryKey: ['lot-recall', lot],
    queryFn: ({ signal }) => call(recallLot, { query: { lot }, signal }),
    enabled: lot !== '',
  })
  return (
    <div className="stack">
      <form
        className="record-tools"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          if (typed.trim() === lot) void found.refetch()
          else setLot(typed.trim())
        }}
      >
        <TextField
          label="Lot that is called back"
          hint="As on the box or in the maker’s letter; capital or small letters are the same."
          exact
          value={typed}
          onChange={setTyped}
        />
        <Button type="submit" look="main" whyNot={typed.trim() === '' ? 'Type the lot first.' : undefined}>
          Find its vehicles
        </Button>
      </form>
      {found.isError ? <ProblemNotice problem={problemText(found.error)} /> : null}
      <StatusLine>{lot === '' ? null : countWords(lot, found.data?.vehicles)}</StatusLine>
      {found.data === undefined ? null : (
        <>
          <Vehicles vehicles={found.data.vehicles} clock={clock} />
          <Shelves shelves={found.data.shelves} />
        </>
      )}
    </div>
  )
}

const countWords = (lot: string, vehicles: readonly RecalledVehicle[] | undefined): string => {
  if (vehicles === undefined) return 'Searching the record.'
  if (vehicles.length === 0)
    return `No vehicle has a part of lot ${lot}, as far as lots were written down when parts were drawn.`
  const callable = vehicles.filter(({ owner }) => owner.mayCall).length
  return `${vehicles.length} ${vehicles.length === 1 ? 'vehicle' : 'vehicles'}; the owners of ${callable} agreed to be called.`
}

function Vehicles({ vehicles, clock }: { vehicles: readonly RecalledVehicle[]; clock: Clock }) {
  if (vehicles.length === 0) return null
  return (
    <table className="record-table">
      <thead>
        <tr>
          <th scope="col">Vehicle</th>
          <th scope="col">Parts of the lot</th>
          <th scope="col">Owner today</th>
        </tr>
      </thead>
      <tbody>
        {vehicles.map(({ vehicleId, description, plate, owner, parts }) => (
          <tr key={vehicleId}>
            <th scope="row">
              {description}
              {plate === null ? null : <> · {plate}</>}
            </th>
            <td>
              {parts.map((part) => (
                <p key={`${part.orderId} ${part.wheel ?? ''} ${part.drawnAt}`}>
                  <Link to={deskOrderPath(part.orderId)}>{part.orderNumber}</Link> {partWords(part, clock)}
                </p>
              ))}
            </td>
            <td>
              {owner.name}: {consentWords(owner)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

const partWords = (
  { wheel, partNumber, drawnAt, isKit, sensorId, heardLast }: RecalledPart,
  clock: Clock,
): string => {
  const now = new Date().toISOString()
  const at = wheel === null ? partNumber : `${wheel}, ${partNumber}`
  const drawn = `${at}, ${isKit ? 'kit fitted' : 'drawn'} ${day(drawnAt, now, clock)}`
  if (sensorId === null) return `${drawn}; not fitted yet, or no sensor`
  const fitted = `${drawn}; sensor …${sensorId.slice(-4)}`
  if (heardLast === null) return fitted
  return heardLast.onThisVehicle
    ? `${fitted}, last heard at ${heardLast.wheel} ${day(heardLast.at, now, clock)}`
    : `${fitted}, last heard on another vehicle ${day(heardLast.at, now, clock)}`
}

const consentWords = ({ mayCall, mayText, mayEmail, phone, email }: RecalledVehicle['owner']): string => {
  const ways = [
    ...(mayCall ? ['be called'] : []),
    ...(mayText ? ['get a text'] : []),
    ...(mayEmail ? ['get e-mail'] : []),
  ]
  if (ways.length === 0) return 'has agreed to no call, text or e-mail: write by post'
  const reach = [
    ...((mayCall || mayText) && phone ? [telephoneWords(phone)] : []),
    ...(mayEmail && email ? [email] : []),
  ]
  return [`may ${ways.join(', ')}`, ...reach].join(', ')
}

type ShelvesProps = {
  shelves: readonly { locationId: string; partNumber: string; came: number; left: number }[]
}

function Shelves({ shelves }: ShelvesProps) {
  const settings = useQuery(settingsQuery)
  const nameOf = (id: string) =>
    settings.data?.locations.find(({ locationId }) => locationId === id)?.name ?? 'another place'
  return shelves.map(({ locationId, partNumber, came, left }) => (
    <p key={`${locationId} ${partNumber}`}>
      {nameOf(locationId)}, {partNumber}: {came} came with this lot written down and {left} left again.{' '}
      {came > left ? `Look for ${came - left} on the shelf and hold them back.` : 'None should lie there.'}
    </p>
  ))
}
