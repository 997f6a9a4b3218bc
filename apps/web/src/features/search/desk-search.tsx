import type { SearchHit } from '@bayledger/contract/search'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { useNavigate } from 'react-router'
import { deskOrderPath, vehiclePath, writeUpPath } from '../../lib/paths.ts'
import { problemText } from '../../lib/problem.ts'
import { SearchBox } from '../../ui/search-box.tsx'
import { searchQuery, shortestSearch } from './queries.ts'

/** Finds an order, a vehicle or a customer. What is live opens: an open order, else the vehicle's page. */
export function DeskSearch() {
  const [text, setText] = useState('')
  const navigate = useNavigate()
  const wanted = text.trim()
  const found = useQuery(searchQuery(wanted))
  const hits = wanted.length < shortestSearch ? [] : (found.data?.hits ?? [])

  const whenEmpty = () => {
    if (wanted.length < shortestSearch) return 'Type two characters or more.'
    if (found.isError) return problemText(found.error).title
    if (found.isFetching) return 'Searching.'
    return `Nothing found for "${wanted}". Try the plate, the last of the VIN, or the last four of the phone number.`
  }

  return (
    <SearchBox
      label="Find"
      placeholder="Plate, VIN, phone, name, order, sensor ID"
      text={text}
      onText={setText}
      hits={hits.map((hit) => ({ id: keyOf(hit), label: labelOf(hit), detail: detailOf(hit) }))}
      isSearching={wanted.length >= shortestSearch && (found.isPending || found.isPlaceholderData)}
      onPick={(picked, isOther) => {
        const hit = hits.find((one) => keyOf(one) === picked.id)
        setText('')
        if (hit !== undefined) navigate(isOther ? writeUpPath(hit.customerId, hit.vehicleId) : pathOf(hit))
      }}
      keys="Enter opens the first or the chosen one. Shift+Enter begins a write-up for it."
      whenEmpty={whenEmpty()}
    />
  )
}

const keyOf = (hit: SearchHit) => [hit.kind, hit.orderId, hit.vehicleId, hit.customerId].join(' ')

const labelOf = (hit: SearchHit) =>
  [hit.orderNumber, hit.customerName, hit.plate].filter((part) => part !== null).join(' · ')

const matchedBy: Readonly<Record<SearchHit['matched'], string>> = {
  'order-number': 'order number',
  plate: 'plate',
  vin: 'VIN',
  phone: 'phone number',
  name: 'name',
  model: 'model',
  'sensor-id': 'sensor ID',
  tin: 'tire number',
}

const detailOf = (hit: SearchHit) =>
  [hit.vehicleDescription, hit.waitsFor, `found by ${matchedBy[hit.matched]}`]
    .filter((part) => part !== null)
    .join(' · ')

const pathOf = (hit: SearchHit) =>
  hit.orderId !== null
    ? deskOrderPath(hit.orderId)
    : hit.vehicleId !== null
      ? vehiclePath(hit.vehicleId)
      : writeUpPath(hit.customerId, null)
