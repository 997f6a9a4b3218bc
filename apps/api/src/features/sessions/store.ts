import type { Awaited } from '@bayledger/contract/endpoint'
import type { Role } from '@bayledger/ledger/role'
import type { Deps, Parts } from '../../deps.ts'

export type SessionRow = {
  readonly shopId: string
  readonly id: string
  readonly kind: 'desk' | 'bay'
  readonly staffId: string
  readonly staffName: string
  readonly roles: readonly Role[]
  readonly shopName: string
  readonly device: DeviceRow | null
  readonly lastSeenAt: Date
  readonly expiresAt: Date
  readonly provenAt: Date
  readonly awaits: Awaited | null
}

export type DeviceRow = {
  readonly shopId: string
  readonly deviceId: string
  readonly name: string
  readonly locationId: string
  readonly locationName: string
  readonly timeZone: string
}

type Row = {
  shop_id: string
  id: string
  kind: 'desk' | 'bay'
  staff_id: string
  staff_name: string
  roles: Role[]
  shop_name: string
  last_seen_at: Date
  expires_at: Date
  proven_at: Date
  awaits: Awaited | null
  device_id: string | null
  device_name: string
  location_id: string
  location_name: string
  time_zone: string
}

const sessionColumns = `
  select s.shop_id, s.id, s.kind, s.staff_id, p.name as staff_name, p.roles, h.name as shop_name, s.last_seen_at, s.expires_at, s.proven_at, s.awaits,
    d.id as device_id, d.name as device_name, l.id as location_id, l.name as location_name, l.time_zone
  from sessions s
  join staff p on p.shop_id = s.shop_id and p.id = s.staff_id and p.active
  join shops h on h.id = s.shop_id
  left join devices d on d.shop_id = s.shop_id and d.id = s.device_id and d.revoked_at is null
  left join locations l on l.shop_id = d.shop_id and l.id = d.location_id
  where s.ended_at is null and (s.device_id is null or d.id is not null)`

/** Every staff request runs this query, so it is a prepared statement. */
export const findSessionByToken = (
  parts: Pick<Parts, 'pool'>,
  tokenHash: string,
): Promise<SessionRow | null> =>
  one(parts, 'session-by-token', `${sessionColumns} and s.token_hash = $1`, [tokenHash])

export const findSessionById = (deps: Deps, id: string): Promise<SessionRow | null> =>
  one(deps, 'session-by-id', `${sessionColumns} and s.id = $1 and s.shop_id = $2`, [id, deps.shopId])

const one = async (
  { pool }: Pick<Parts, 'pool'>,
  name: string,
  text: string,
  values: unknown[],
): Promise<SessionRow | null> => {
  const { rows } = await pool.query<Row>({ name, text, values })
  const row = rows[0]
  if (!row) return null
  return {
    shopId: row.shop_id,
    id: row.id,
    kind: row.kind,
    staffId: row.staff_id,
    staffName: row.staff_name,
    roles: row.roles,
    shopName: row.shop_name,
    lastSeenAt: row.last_seen_at,
    expiresAt: row.expires_at,
    provenAt: row.proven_at,
    awaits: row.awaits,
    device:
      row.device_id === null
        ? null
        : {
            shopId: row.shop_id,
            deviceId: row.device_id,
            name: row.device_name,
            locationId: row.location_id,
            locationName: row.location_name,
            timeZone: row.time_zone,
          },
  }
}

export const markSeen = (deps: Deps, id: string, at: Date) =>
  deps.prisma.session.update({ where: { shopId_id: { shopId: deps.shopId, id } }, data: { lastSeenAt: at } })

export const insertSession = async (
  deps: Deps,
  session: {
    readonly id: string
    readonly tokenHash: string
    readonly staffId: string
    readonly deviceId: string | null
    readonly kind: 'desk' | 'bay'
    readonly createdAt: Date
    readonly lastSeenAt: Date
    readonly expiresAt: Date
    readonly provenAt: Date
    readonly awaits: Awaited | null
    readonly address: string
    readonly browser: string | null
  },
): Promise<void> => {
  await deps.prisma.session.create({ data: { shopId: deps.shopId, ...session } })
}

export const endSession = async (deps: Deps, id: string): Promise<void> => {
  await deps.prisma.session.updateMany({
    where: { shopId: deps.shopId, id, endedAt: null },
    data: { endedAt: deps.clock.now() },
  })
}

/** Whether anybody but this person signed in on a tablet after an instant. */
export const hasNewerSession = async (
  deps: Deps,
  { deviceId, staffId, since }: { deviceId: string; staffId: string; since: Date },
): Promise<boolean> => {
  const newer = await deps.prisma.session.findFirst({
    where: { shopId: deps.shopId, deviceId, staffId: { not: staffId }, createdAt: { gt: since } },
    select: { id: true },
  })
  return newer !== null
}

/** Ends the session at the desk that a browser holds, if it is one of this shop. */
export const endDeskSession = async (deps: Deps, tokenHash: string): Promise<void> => {
  await deps.prisma.session.updateMany({
    where: { shopId: deps.shopId, kind: 'desk', tokenHash, endedAt: null },
    data: { endedAt: deps.clock.now() },
  })
}

/** The tablet on which a person signed in last; `null`: on none yet. */
export const findOwnTablet = async (deps: Deps, staffId: string): Promise<string | null> => {
  const last = await deps.prisma.session.findFirst({
    where: { shopId: deps.shopId, staffId, kind: 'bay' },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
    select: { deviceId: true },
  })
  return last?.deviceId ?? null
}

export const endSessionsOfDevice = async (deps: Deps, deviceId: string): Promise<void> => {
  await deps.prisma.session.updateMany({
    where: { shopId: deps.shopId, deviceId, endedAt: null },
    data: { endedAt: deps.clock.now() },
  })
}

/** Every shop of this database, by name. */
export const listShops = async ({
  pool,
}: Pick<Parts, 'pool'>): Promise<{ shopId: string; name: string }[]> => {
  const { rows } = await pool.query<{ shopId: string; name: string }>({
    name: 'shops',
    text: 'select id as "shopId", name from shops order by name, id',
  })
  return rows
}

export const findStaffBySignInName = (deps: Deps, signInName: string) =>
  deps.prisma.staff.findUnique({ where: { shopId_signInName: { shopId: deps.shopId, signInName } } })

export const findStaffById = (deps: Deps, id: string) =>
  deps.prisma.staff.findUnique({ where: { shopId_id: { shopId: deps.shopId, id } } })

export const findDevice = async (
  { prisma }: Pick<Parts, 'prisma'>,
  tokenHash: string,
): Promise<DeviceRow | null> => {
  const device = await prisma.device.findUnique({ where: { tokenHash }, include: { location: true } })
  if (!device || device.revokedAt !== null) return null
  return {
    shopId: device.shopId,
    deviceId: device.id,
    name: device.name,
    locationId: device.locationId,
    locationName: device.location.name,
    timeZone: device.location.timeZone,
  }
}

/** The public half of a tablet's key; `null`: it has none. */
export const findTabletKey = async (deps: Deps, deviceId: string): Promise<string | null> => {
  const where = { shopId_deviceId: { shopId: deps.shopId, deviceId } }
  return (await deps.prisma.deviceKey.findUnique({ where }))?.publicKey ?? null
}
