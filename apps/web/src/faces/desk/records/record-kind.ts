import { type Customer, getCustomer, listCustomers } from '@bayledger/contract/customers'
import {
  CustomerField,
  listCustomerMerges,
  listVehicleMerges,
  type Merge,
  mergeCustomers,
  mergeVehicles,
  VehicleField,
} from '@bayledger/contract/merges'
import { search } from '@bayledger/contract/search'
import { getVehicle, type Vehicle } from '@bayledger/contract/vehicles'
import { languageNames } from '@bayledger/wording/language-names'
import { telephoneWords } from '@bayledger/wording/telephone'
import { call } from '../../../lib/api-client.ts'

/** One of two records as it is shown beside the other: the words of each field, `null` where it is empty. */
export type ShownRecord = {
  readonly id: string
  readonly version: number
  readonly name: string
  readonly words: Readonly<Record<string, string | null>>
}

export type FoundRecord = { readonly id: string; readonly words: string }

/** What the merging of customers and that of vehicles differ in. */
export type RecordKind = {
  readonly subject: 'customer' | 'vehicle'
  readonly searchLabel: string
  readonly fields: readonly { readonly field: string; readonly label: string }[]
  readonly find: (typed: string) => Promise<readonly FoundRecord[]>
  readonly read: (id: string) => Promise<ShownRecord>
  readonly merge: (survivor: ShownRecord, merged: ShownRecord, take: readonly string[]) => Promise<Merge>
  readonly history: (id: string) => Promise<readonly Merge[]>
}

const may = (allowed: boolean) => (allowed ? 'yes' : 'no')

const shownCustomer = (customer: Customer): ShownRecord => ({
  id: customer.customerId,
  version: customer.version,
  name: customer.name,
  words: {
    name: customer.name,
    phone: customer.phone ? telephoneWords(customer.phone) : null,
    email: customer.email ?? null,
    language: languageNames[customer.language],
    mayCall: may(customer.mayCall),
    mayText: may(customer.mayText),
    mayEmail: may(customer.mayEmail),
  },
})

export const customerKind: RecordKind = {
  subject: 'customer',
  searchLabel: 'Name or telephone number of the other record',
  fields: [
    { field: 'name', label: 'Name' },
    { field: 'phone', label: 'Telephone' },
    { field: 'email', label: 'E-mail' },
    { field: 'language', label: 'Language' },
    { field: 'mayCall', label: 'May be called' },
    { field: 'mayText', label: 'May be texted' },
    { field: 'mayEmail', label: 'May be e-mailed' },
  ],
  find: async (q) =>
    (await call(listCustomers, { query: { q } })).customers.map((customer) => ({
      id: customer.customerId,
      words: [customer.name, customer.phone ? telephoneWords(customer.phone) : null, customer.email]
        .filter(Boolean)
        .join(' · '),
    })),
  read: async (customerId) => shownCustomer(await call(getCustomer, { params: { customerId } })),
  merge: (survivor, merged, take) =>
    call(mergeCustomers, {
      params: { customerId: survivor.id },
      version: survivor.version,
      body: {
        mergedId: merged.id,
        mergedVersion: merged.version,
        take: CustomerField.options.filter((field) => take.includes(field)),
      },
    }),
  history: async (customerId) => (await call(listCustomerMerges, { params: { customerId } })).merges,
}

const shownVehicle = (vehicle: Vehicle, owner: Customer): ShownRecord => ({
  id: vehicle.vehicleId,
  version: vehicle.version,
  name: [vehicle.plate, vehicle.description].filter(Boolean).join(' · '),
  words: {
    customerId: owner.name,
    plate: vehicle.plate,
    plateRegion: vehicle.plateRegion,
    vin: vehicle.vin,
    description: vehicle.description,
    color: vehicle.color,
    notes: vehicle.notes,
    sheetId: vehicle.sheetId === null ? null : 'has one',
  },
})

export const vehicleKind: RecordKind = {
  subject: 'vehicle',
  searchLabel: 'Plate, VIN or owner of the other record',
  fields: [
    { field: 'customerId', label: 'Owner' },
    { field: 'plate', label: 'Plate' },
    { field: 'plateRegion', label: 'State of the plate' },
    { field: 'vin', label: 'VIN' },
    { field: 'description', label: 'Make, model and year' },
    { field: 'color', label: 'Color' },
    { field: 'notes', label: 'Notes' },
    { field: 'sheetId', label: 'Specification sheet' },
  ],
  find: async (q) =>
    (await call(search, { query: { q } })).hits.flatMap(
      ({ vehicleId, plate, vehicleDescription, customerName }) =>
        vehicleId === null
          ? []
          : [
              {
                id: vehicleId,
                words: [plate ?? 'no plate', vehicleDescription, customerName].filter(Boolean).join(' · '),
              },
            ],
    ),
  read: async (vehicleId) => {
    const vehicle = await call(getVehicle, { params: { vehicleId } })
    return shownVehicle(vehicle, await call(getCustomer, { params: { customerId: vehicle.customerId } }))
  },
  merge: (survivor, merged, take) =>
    call(mergeVehicles, {
      params: { vehicleId: survivor.id },
      version: survivor.version,
      body: {
        mergedId: merged.id,
        mergedVersion: merged.version,
        take: VehicleField.options.filter((field) => take.includes(field)),
      },
    }),
  history: async (vehicleId) => (await call(listVehicleMerges, { params: { vehicleId } })).merges,
}
