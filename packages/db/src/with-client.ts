import { Client, type ClientConfig } from 'pg'

/** Runs `work` on one connection outside any pool, and closes it. A connection that breaks fails the work's query. */
export async function withClient<T>(
  where: string | ClientConfig,
  work: (client: Client) => Promise<T>,
): Promise<T> {
  const client = new Client(where)
  // Without a listener a broken connection would end the whole process; the query under way fails all the same.
  client.on('error', () => undefined)
  await client.connect()
  try {
    return await work(client)
  } finally {
    await client.end().catch(() => undefined)
  }
}
