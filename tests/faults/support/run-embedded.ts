import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'

/**
 * A Bayledger that does nothing but run its PostgreSQL: says on its first line where, as JSON, or what keeps it
 * from running; stops on SIGTERM. Progress goes to the error channel.
 */
const [dataFolder = '', whenInUse] = process.argv.slice(2)

try {
  const server = await startEmbeddedPostgres({
    dataFolder,
    progress: (line) => console.error(line),
    whenInUse: whenInUse === 'join' ? 'join' : 'refuse',
  })
  console.log(
    JSON.stringify({
      url: server.ownerUrl,
      serviceUrl: server.serviceUrl,
      superuserUrl: server.superuserUrl,
      userId: process.getuid?.(),
    }),
  )
  const keepBusy = setInterval(() => undefined, 60_000)
  process.once('SIGTERM', async () => {
    await server.stop()
    clearInterval(keepBusy)
  })
} catch (error) {
  console.log(JSON.stringify({ problem: error instanceof Error ? error.message : String(error) }))
}
