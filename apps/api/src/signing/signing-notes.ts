import type { Pool, PoolClient } from 'pg'

/** A key with which a shop's reports were sealed from a moment on; the newest is the shop's. */
export type SigningNote = {
  readonly number: number
  /** SHA-256 of its public key, in hexadecimal. */
  readonly fingerprint: string
  readonly certificate: string
  readonly since: Date
}

type Reader = Pick<Pool | PoolClient, 'query'>

/** Every key that the database knows of a shop, the oldest first. */
export const listSigningNotes = async (reader: Reader, shopId: string): Promise<SigningNote[]> => {
  const { rows } = (await reader.query(
    'select number, fingerprint, certificate, since from signing_keys where shop_id = $1 order by number',
    [shopId],
  )) as { rows: SigningNote[] }
  return rows
}

export const noteSigningKey = async (
  reader: Reader,
  shopId: string,
  { number, fingerprint, certificate, since }: SigningNote,
): Promise<void> => {
  await reader.query(
    'insert into signing_keys (shop_id, number, fingerprint, certificate, since) values ($1, $2, $3, $4, $5)',
    [shopId, number, fingerprint, certificate, since],
  )
}

/** Whether a shop has sealed reports. */
export const hasSealed = async (reader: Reader, shopId: string): Promise<boolean> => {
  const { rows } = await reader.query('select from sealed_reports where shop_id = $1 limit 1', [shopId])
  return rows.length > 0
}

/** The shops of the database, the first one first. */
export const listShopNames = async (reader: Reader): Promise<{ id: string; name: string }[]> => {
  const { rows } = (await reader.query('select id, name from shops order by created_at, id')) as {
    rows: { id: string; name: string }[]
  }
  return rows
}

/** Does work while nobody else, in whichever process, makes or changes a key of this database. */
export const whileKeysRest = async <T>(pool: Pool, work: (client: PoolClient) => Promise<T>): Promise<T> => {
  const client = await pool.connect()
  try {
    await client.query('begin')
    await client.query("select pg_advisory_xact_lock(hashtext('signing_keys'))")
    const done = await work(client)
    await client.query('commit')
    return done
  } catch (error) {
    await client.query('rollback')
    throw error
  } finally {
    client.release()
  }
}
