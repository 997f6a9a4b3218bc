import type { StaffMember } from '@bayledger/contract/identity'
import type { Role } from '@bayledger/ledger/role'

/** Roles are held to the list by a constraint of the database. */
export const presentStaff = (staff: { id: string; name: string; roles: string[] }): StaffMember => ({
  staffId: staff.id,
  name: staff.name,
  roles: staff.roles as Role[],
})
