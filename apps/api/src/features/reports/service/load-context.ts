import { moneySidesOf } from '@bayledger/ledger/questions/money'
import { mostPictures } from '@bayledger/report/compose/photos-section'
import type { ReportContext } from '@bayledger/report/compose-content'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { Deps } from '../../../deps.ts'
import { getCustomer } from '../../customers/service.ts'
import type { Ledger } from '../../entries/service/load-ledger.ts'
import { sidesOf } from '../../entries/service/read-sides.ts'
import { listPrintCopies, listReceived } from '../../photos/service.ts'
import { getSettings } from '../../settings/service.ts'
import { listStaff } from '../../staff/service.ts'
import { getVehicle } from '../../vehicles/service.ts'
import { templateVersion } from '../policy.ts'

/** What a report says beside its ledger: names and words, the shop's head, what has arrived of the photos. */
export const loadContext = async (
  deps: Deps,
  { state, entries }: Ledger,
  report: {
    readonly number: string
    readonly composedAt: string
    readonly supersedes: string | null
    readonly sealKey: string
  },
): Promise<{ readonly context: Omit<ReportContext, 'stamp'>; readonly settingsVersion: number }> => {
  const { opened } = state
  if (!opened) throw new Error(`order ${state.orderId} was never opened`)
  const photos = state.photos.map(({ digest }) => digest)
  const [{ shop, head }, customer, vehicle, people, sides, photosReceived, pictures] = await Promise.all([
    getSettings(deps),
    getCustomer(deps, opened.customerId),
    getVehicle(deps, opened.vehicleId),
    listStaff(deps),
    sidesOf(deps, entries, new Set(['personal', 'money'])),
    listReceived(deps, photos),
    listPrintCopies(deps, photos.slice(0, mostPictures)),
  ])
  const location = shop.locations.find(({ id }) => id === state.locationId) ?? shop.locations[0]
  return {
    settingsVersion: head.version,
    context: {
      language: customerLanguages[customer.language],
      reportNumber: report.number,
      composedAt: report.composedAt,
      timeZone: location?.timeZone ?? 'UTC',
      checkAddress: `${deps.publicAddress}/check`,
      sealKey: report.sealKey,
      templateVersion,
      supersedes: report.supersedes,
      shop: { name: shop.name, lines: head.lines, telephone: head.telephone, says: head },
      vehicle: {
        description: vehicle.description,
        plate: vehicle.plate,
        vinLastSix: vehicle.vin?.slice(-6) ?? null,
      },
      customerName: customer.name,
      texts: Object.fromEntries(
        sides.filter(({ side }) => side === 'personal').map(({ digest, text }) => [digest, text]),
      ),
      staff: Object.fromEntries([...people.staff, ...people.former].map(({ id, name }) => [id, name])),
      money: moneySidesOf(
        entries,
        sides.filter(({ side }) => side === 'money'),
      ),
      photosReceived,
      pictures,
    },
  }
}
