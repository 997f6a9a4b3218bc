import type { Awaited } from '@bayledger/contract/endpoint'
import type { PersonContent } from '@bayledger/contract/people'
import type { Prisma, Staff } from '@bayledger/db/generated/client'
import type { Role } from '@bayledger/ledger/role'
import type { Kept, RecordStore } from '../../core/record-versions.ts'

/** What the history of a person says: also how often PIN and password were set. */
export type KeptPerson = PersonContent & { readonly pinVersion: number; readonly passwordVersion: number }

export type PersonRow = Kept<KeptPerson> & {
  readonly pinHash: string | null
  readonly passwordHash: string | null
}

const rowOf = (row: Staff): PersonRow => ({
  id: row.id,
  version: row.version,
  content: {
    name: row.name,
    signInName: row.signInName,
    // Held to the list by a constraint of the database.
    roles: row.roles as Role[],
    active: row.active,
    pinVersion: row.pinVersion,
    passwordVersion: row.passwordVersion,
  },
  pinHash: row.pinHash,
  passwordHash: row.passwordHash,
})

/** Those who work here first, then by name. */
export const listPeople = async (
  prisma: Pick<Prisma.TransactionClient, 'staff'>,
  shopId: string,
): Promise<PersonRow[]> =>
  (
    await prisma.staff.findMany({
      where: { shopId },
      orderBy: [{ active: 'desc' }, { name: 'asc' }, { id: 'asc' }],
    })
  ).map(rowOf)

export const findPerson = async (
  prisma: Pick<Prisma.TransactionClient, 'staff'>,
  shopId: string,
  id: string,
): Promise<PersonRow | null> => {
  const row = await prisma.staff.findUnique({ where: { shopId_id: { shopId, id } } })
  return row && rowOf(row)
}

const columnsOf = ({ name, signInName, roles, active }: KeptPerson) => ({
  name,
  signInName,
  roles: [...roles],
  active,
})

export const personRecords: RecordStore<KeptPerson> = {
  subject: 'person',
  lock: async (tx, shopId, id) => {
    await tx.$queryRaw`select 1 from staff where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
    const found = await findPerson(tx, shopId, id)
    return found && { id: found.id, version: found.version, content: found.content }
  },
  insert: async (tx, shopId, { id, version, content }) => {
    await tx.staff.create({ data: { shopId, id, version, ...columnsOf(content) } })
  },
  update: async (tx, shopId, { id, version, content }) => {
    await tx.staff.update({
      where: { shopId_id: { shopId, id } },
      data: { version, ...columnsOf(content) },
    })
  },
}

/** The database raises the version of what is set here. */
export const storeSecret = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  id: string,
  secret:
    | { readonly pinHash: string }
    | { readonly passwordHash: string; readonly firstPasswordUntil: Date | null },
): Promise<void> => {
  await tx.staff.update({ where: { shopId_id: { shopId, id } }, data: secret })
  await tx.signInFailure.deleteMany({ where: { shopId, who: id } })
}

/** What the session awaits now. */
export const awaitNext = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  sessionId: string,
  awaits: Awaited | null,
): Promise<void> => {
  await tx.session.update({ where: { shopId_id: { shopId, id: sessionId } }, data: { awaits } })
}

/** Ends the sessions of a person at the desk and on tablets, but the one that is named. */
export const endSessions = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  { staffId, except, at }: { readonly staffId: string; readonly except: string | null; readonly at: Date },
): Promise<void> => {
  await tx.session.updateMany({
    where: { shopId, staffId, endedAt: null, ...(except === null ? {} : { id: { not: except } }) },
    data: { endedAt: at },
  })
}
