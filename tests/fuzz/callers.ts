import { withClient } from '@bayledger/db/with-client'
import type { Client } from 'pg'
import { type PersonKey, people } from '../../prisma/seeds/demo/people.ts'
import { makeTabletKey } from '../support/tablet-key.ts'
import type { Access } from './operations.ts'
import { type FuzzReply, sendRequest } from './send.ts'

/** Who calls: nobody, a customer's link, a tablet without PIN, and people of every role where they work. */
export const roleNames = [
  'nobody',
  'customer',
  'tablet',
  'technician in the bay',
  'lead in the bay',
  'technician at the desk',
  'advisor at the desk',
  'owner at the desk',
] as const
export type RoleName = (typeof roleNames)[number]

/** The roles that an operation's access lets in, as far as access alone says it. */
export const rolesFor = (access: Access): readonly RoleName[] =>
  roleNames.filter((role) => {
    if (access === 'public') return true
    if (access === 'customer-link') return role === 'customer'
    if (role === 'nobody' || role === 'customer') return false
    if (role === 'tablet') return access === 'device'
    return access !== 'desk' || role.endsWith('at the desk')
  })

export type Callers = {
  /** The cookies of a role. */
  readonly cookiesOf: (role: RoleName) => Promise<readonly string[]>
  /** Lets the role in anew at its next call: what it was let in by is over. */
  readonly lost: (role: RoleName) => void
}

export type FuzzTarget = {
  readonly address: string
  /** The database as its owner reaches it. */
  readonly ownerUrl: string
  readonly shopId: string
  /** An order of which the customer has a link, and the place of the tablet. */
  readonly orderId: string
  readonly locationId: string
  readonly now: () => number
}

const who = {
  'technician in the bay': 'rufus',
  'lead in the bay': 'greta',
  'technician at the desk': 'ines',
  'advisor at the desk': 'ottoline',
  'owner at the desk': 'marguerite',
} as const satisfies Partial<Record<RoleName, PersonKey>>

/**
 * Lets every role in, and again whenever the requests themselves put it out: they may change passwords, revoke tablets
 * and withdraw links. What people sign in with is then put back as it was, as the database's owner. `heard` is told every answer.
 */
export const openCallers = async (
  target: FuzzTarget,
  heard: (path: string, reply: FuzzReply) => void = () => undefined,
): Promise<Callers> => {
  const { address, ownerUrl, shopId } = target
  const staffAtFirst = await withClient(ownerUrl, async (client) => {
    const { rows } = await client.query<StaffRow>('select * from staff where shop_id = $1', [shopId])
    return rows
  })
  const cookies = new Map<RoleName, Promise<readonly string[]>>()
  let turn = 0

  const post = async (path: string, body: object, held: readonly string[]) => {
    turn += 1
    const reply = await sendRequest(
      address,
      {
        method: 'POST',
        path,
        headers: {
          'sec-fetch-site': 'same-origin',
          'content-type': 'application/json',
          ...(held.length > 0 ? { cookie: held.join('; ') } : {}),
        },
        body: Buffer.from(JSON.stringify(body)),
      },
      turn,
    )
    heard(path, reply)
    return reply
  }
  const postOrThrow = async (path: string, body: object, held: readonly string[]) => {
    const reply = await post(path, body, held)
    if (reply.status !== 201) throw new Error(`POST ${path} answered ${reply.status}: ${reply.text}`)
    return reply
  }
  const atDesk = async (person: PersonKey) => {
    const { signInName, password } = people[person]
    const signIn = () => post('/api/sessions/desk', { shopId, name: signInName, password }, [])
    const first = await signIn()
    if (first.status === 201 && !first.text.includes('"awaits"')) return first.cookies
    await putPeopleBack(ownerUrl, shopId, staffAtFirst)
    const second = await signIn()
    if (second.status !== 201) throw new Error(`${person} cannot sign in: ${second.text}`)
    return second.cookies
  }
  const asTablet = async () => {
    const desk = await atDesk('ottoline')
    const made = await postOrThrow('/api/enrollment-codes', { locationId: target.locationId }, desk)
    const { code } = JSON.parse(made.text) as { code: string }
    const name = `Fuzz ${turn}`
    const { publicKey } = makeTabletKey()
    return (await postOrThrow('/api/devices', { code, name, publicKey }, [])).cookies
  }
  const inBay = async (person: PersonKey) => {
    const device = await asTablet()
    const { id, pin } = people[person]
    const signIn = () => post('/api/sessions/bay', { staffId: id, pin }, device)
    const first = await signIn()
    if (first.status === 201) return [...device, ...first.cookies]
    await putPeopleBack(ownerUrl, shopId, staffAtFirst)
    const second = await signIn()
    if (second.status !== 201) throw new Error(`${person} cannot sign in on a tablet: ${second.text}`)
    return [...device, ...second.cookies]
  }
  const asCustomer = async () => {
    const desk = await atDesk('ottoline')
    const made = await postOrThrow(`/api/orders/${target.orderId}/links`, {}, desk)
    const { secret } = JSON.parse(made.text) as { secret: string }
    return (await postOrThrow('/api/customer/session', { secret }, [])).cookies
  }
  const letIn = (role: RoleName): Promise<readonly string[]> => {
    if (role === 'nobody') return Promise.resolve([])
    if (role === 'customer') return asCustomer()
    if (role === 'tablet') return asTablet()
    return role.endsWith('in the bay') ? inBay(who[role]) : atDesk(who[role])
  }

  return {
    cookiesOf: (role) => {
      const held = cookies.get(role) ?? letIn(role)
      cookies.set(role, held)
      return held
    },
    lost: (role) => cookies.delete(role),
  }
}

type StaffRow = {
  readonly id: string
  readonly name: string
  readonly sign_in_name: string
  readonly roles: readonly string[]
  readonly password_hash: string | null
  readonly pin_hash: string | null
}

/** Versions are only added to: the next one asks nobody for a second step. */
const askNoSecondStep = (client: Client, shopId: string) =>
  client.query(
    `insert into setting_versions (shop_id, id, kind, location_id, version, body, created_by, created_at)
      select shop_id, gen_random_uuid(), kind, location_id, version + 1, '{"secondStep": false}', created_by, now()
        from setting_versions where shop_id = $1 and kind = 'access-rules' order by version desc limit 1`,
    [shopId],
  )

const putPeopleBack = (ownerUrl: string, shopId: string, rows: readonly StaffRow[]): Promise<void> =>
  withClient(ownerUrl, async (client) => {
    // Whoever was made since may hold the name that somebody signs in with.
    await client.query(
      `update staff set sign_in_name = 'gone-' || left(id::text, 18)
        where shop_id = $1 and id <> all ($2::uuid[])`,
      [shopId, rows.map(({ id }) => id)],
    )
    for (const row of rows)
      await client.query(
        `update staff set name = $3, sign_in_name = $4, roles = $5, password_hash = $6, pin_hash = $7, active = true,
            first_password_until = null
          where shop_id = $1 and id = $2`,
        [shopId, row.id, row.name, row.sign_in_name, row.roles, row.password_hash, row.pin_hash],
      )
    await client.query('delete from sign_in_failures where shop_id = $1', [shopId])
    await askNoSecondStep(client, shopId)
  })
