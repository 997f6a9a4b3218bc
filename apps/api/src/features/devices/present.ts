import type { Device } from '@bayledger/contract/devices'
import type { StaffMember } from '@bayledger/contract/identity'
import type { Role } from '@bayledger/ledger/role'

export const presentDevice = (
  deviceId: string,
  name: string,
  location: { id: string; name: string; timeZone: string },
): Device => ({
  deviceId,
  name,
  location: { locationId: location.id, name: location.name, timeZone: location.timeZone },
})

/** Roles are held to the list by a constraint of the database. */
export const presentStaff = (staff: { id: string; name: string; roles: string[] }): StaffMember => ({
  staffId: staff.id,
  name: staff.name,
  roles: staff.roles as Role[],
})
