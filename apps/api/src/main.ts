import { join } from 'node:path'
import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import {
  bringUpToDate,
  guardServiceRole,
  isYetToBeMade,
  openShopDatabase,
  type ShopDatabase,
} from '@bayledger/db/shop-database'
import { people } from '../../../prisma/seeds/demo/people.ts'
import { shopId as demoShopId } from '../../../prisma/seeds/demo/places.ts'
import { buildApp } from './app.ts'
import { keepBackups } from './backup-keeper.ts'
import { folderCarrier } from './carriers/folder-carrier.ts'
import { smtpCarrier } from './carriers/smtp-carrier.ts'
import { type Config, ConfigProblem, isLoopback, isReachedOverTls } from './config.ts'
import { databaseInPlain } from './database-in-plain.ts'
import { isLoadedToTheEnd, yearLoadedKind } from './demo-loaded.ts'
import type { Parts } from './deps.ts'
import { getReadyToSeal } from './features/reports/service/seal-in-worker.ts'
import { knownHosts } from './http/known-hosts.ts'
import { startLiveHub } from './http/live.ts'
import { closeInTime } from './http/patience.ts'
import { tlsWith } from './http/tls.ts'
import { loadDemoFast, writeDemoAhead } from './load-demo.ts'
import { lookAtCertificate } from './look-at-certificate.ts'
import { messageKeeper } from './message-keeper.ts'
import { observe } from './observe/observe.ts'
import { openLog } from './observe/open-log.ts'
import { keepPrivacy } from './privacy-keeper.ts'
import { keepDigests } from './proof/digest-keeper.ts'
import { listShopZones } from './proof/digest-notes.ts'
import { rebuildAfterUpgrade } from './rebuild-after-upgrade.ts'
import { keptSealingKey } from './sealing-key.ts'
import { keptSigning } from './signing/kept-signing.ts'
import { stampKeeper } from './stamp-keeper.ts'
import { noStamping, stampingBy } from './stamping/stamping.ts'

export type Service = {
  readonly address: string
  readonly signIn: readonly string[]
  readonly stop: () => Promise<void>
}

/**
 * Starts everything that the shops of a database need: the database, pending migrations, the demo in an empty one,
 * the keys that seal, and the service. `say` gets a line for each thing that takes longer than a second; `facesBuilt` is waited for
 * last; `opening` is the database, where somebody began to open it before.
 */
export const startService = async (
  config: Config,
  say: (line: string) => void,
  facesBuilt: Promise<void> = Promise.resolve(),
  opening: Promise<ShopDatabase> = openShopDatabase(config, say, 'refuse'),
): Promise<Service> => {
  const undo: (() => Promise<unknown>)[] = []
  const stop = async () => {
    for (const step of undo.splice(0).reverse()) await step()
  }
  try {
    return { ...(await assemble(config, say, facesBuilt, opening, undo)), stop }
  } catch (error) {
    await stop()
    throw error
  }
}

const assemble = async (
  config: Config,
  say: (line: string) => void,
  facesBuilt: Promise<void>,
  opening: Promise<ShopDatabase>,
  undo: (() => Promise<unknown>)[],
) => {
  const logger = openLog(config.logLevel)
  for (const warning of [
    databaseInPlain('DATABASE_URL', config.databaseUrl),
    databaseInPlain('DATABASE_OWNER_URL', config.databaseOwnerUrl),
  ])
    if (warning !== null) logger.warn(warning)
  const demoAhead = isYetToBeMade(config) && config.seed !== 'none' ? writeDemoAhead(opening) : null
  const database = await opening
  undo.push(() => database.stop())
  const certificateTrouble = config.tls && lookAtCertificate(config.tls, new Date())
  await slowly(say, 'Bringing the database up to date', async () =>
    rebuildAfterUpgrade(database.ownerUrl, await bringUpToDate(database)),
  )
  await guardServiceRole(database, config.databaseRoles, say)
  const url = database.serviceUrl
  const pool = openPool({
    url,
    onIdleError: (error) => logger.warn({ err: error }, 'a database connection was lost'),
  })
  undo.push(() => pool.end())
  const prisma = openClient(pool)
  undo.push(() => prisma.$disconnect())

  const known = await prisma.shop.findFirst({ orderBy: { createdAt: 'asc' } })
  const isDemo = known ? known.id === demoShopId : config.seed !== 'none'
  const host = isDemo && !config.hostIsGiven ? '127.0.0.1' : config.host
  if (isDemo && !isLoopback(host))
    throw new ConfigProblem(
      `The passwords of the demo shop are published, so it is served on this machine only, and HOST is "${host}". For a shop of your own set SHOP_SEED=none and an empty DATA_FOLDER; for the demo leave HOST unset.`,
    )
  if (known && isDemo && !(await isLoadedToTheEnd(prisma, demoShopId)))
    throw new ConfigProblem(
      `The demo shop in this database was not loaded to its end: the first start was broken off. Delete ${config.databaseUrl === null ? config.dataFolder : 'and create the database again'} and start again.`,
    )
  const isFirstStart = !known && isDemo
  // The demo's year is loaded behind the first page, and what of its day has ended with it.
  const isLoadedBehind = config.seed === 'demo'
  if (isFirstStart && !isLoadedBehind) getReadyToSeal()
  const clock = { now: () => new Date() }
  const live = await startLiveHub(
    url,
    (words, error) => logger.warn({ err: error }, words),
    (words, seconds) => logger.warn({ seconds }, words),
  )
  undo.push(() => live.close())
  const backups = keepBackups({
    config,
    superuserUrl: database.superuserUrl,
    clock,
    timeZone: async () => (await listShopZones(pool))[0]?.timeZone ?? 'UTC',
    problem: (words, error) => logger.error({ err: error }, words),
  })
  const loading = new Set<string>()
  const tls = config.tls !== null
  const scheme = tls ? 'https' : 'http'
  const parts: Parts = {
    prisma,
    pool,
    clock,
    tls: isReachedOverTls(config),
    publicAddress: config.publicAddress ?? `${scheme}://${nameOf(host)}:${config.port}`,
    signing: keptSigning({ ...config, pool, clock, daysBefore: isDemo ? 400 : 1 }),
    sealing: await keptSealingKey(config.dataFolder),
    stamping: stampingBy(config, clock, (words) => logger.warn(words)),
    live,
    backups: backups.state,
    loading,
    digestPlaces: config,
    carriers: {
      email: config.mail && smtpCarrier(config.mail),
      text: config.textFolder === null ? null : folderCarrier(config.textFolder),
    },
  }
  const demo = { parts: { ...parts, stamping: noStamping }, loading, hastily: hastily(url) }
  const finishDay = isFirstStart
    ? await slowly(say, 'Loading the demo shop', () => loadDemoFast({ ...demo, ahead: demoAhead }))
    : null
  if (finishDay && !isLoadedBehind) await slowly(say, "Sealing the demo's reports", finishDay)
  undo.push(() => backups.stop())
  const digests = keepDigests({
    pool,
    clock,
    places: config,
    problem: (words, error) => logger.error({ err: error }, words),
  })
  await digests.closeDays()
  undo.push(() => digests.stop())
  for (const trouble of await parts.signing.signingTroubles()) say(trouble)
  if (certificateTrouble !== null) say(certificateTrouble)
  await facesBuilt
  const messages = messageKeeper(
    parts,
    (words, error) => logger.error({ err: error }, words),
    (words, seconds) => logger.warn({ seconds }, words),
  )
  messages.keep()
  backups.keep()
  if (!isDemo && backups.state().state === 'no-key')
    say(
      'There are no backups: nobody has made a key for them yet. Run npm run backup:key, and read docs/backups.md.',
    )
  undo.push(() => messages.stop())
  const privacy = keepPrivacy(parts, (words, error) => logger.error({ err: error }, words))
  // Before anybody is answered: a restored database holds people who were erased since.
  await privacy.look()
  privacy.keep()
  undo.push(() => privacy.stop())
  const stamps = stampKeeper(parts, (words, error) => logger.error({ err: error }, words))
  stamps.keep()
  undo.push(() => stamps.stop())
  const observed = await observe(config, { pool, live }, say)
  undo.push(() => observed.stop())
  const app = await buildApp({
    parts,
    logger,
    webFolder: join(import.meta.dirname, '../../web/dist'),
    hosts: knownHosts(config),
    trustProxy: config.trustProxy,
    ...(config.tls ? { https: tlsWith(config.tls) } : {}),
    callsPerMinute: config.callsPerMinute,
    checksEveryReply: false,
    answered: observed.answered,
  })
  undo.push(() => closeInTime(app))
  await app.listen({ port: config.port, host })
  const { port } = app.server.address() as { port: number }
  if (isDemo && isLoadedBehind && !(await isLoadedToTheEnd(prisma, demoShopId, yearLoadedKind))) {
    const { loadYear } = await import('./seed-year.ts')
    const year = loadYear({ ...demo, shopId: demoShopId, say, finishDay })
    undo.push(() => year.stop())
    year.done.catch((error: unknown) => logger.error({ err: error }, "the demo's year was not loaded"))
  }
  return {
    address: config.publicAddress ?? `${scheme}://${nameOf(host)}:${port}`,
    signIn: isDemo ? demoSignIn() : known ? [] : [makeYourShop(`${scheme}://localhost:${port}/desk`)],
  }
}

/**
 * Does work on connections of its own that do not wait for the disk at each commit. Whoever notes the work as done on another
 * connection waits, and with that everything before is on the disk too (PostgreSQL manual, 28.4 Asynchronous Commit).
 */
const hastily =
  (url: string) =>
  async (parts: Parts, work: (hasty: Parts) => Promise<unknown>): Promise<void> => {
    const hasty = new URL(url)
    hasty.searchParams.set('options', '-c synchronous_commit=off')
    const pool = openPool({ url: hasty.href, size: 2, onIdleError: () => undefined })
    const prisma = openClient(pool)
    try {
      await work({ ...parts, pool, prisma })
    } finally {
      await prisma.$disconnect()
      await pool.end()
    }
  }

/** A browser treats localhost as safe, but not the number of the address. */
const nameOf = (host: string): string => (host === '127.0.0.1' || host === '0.0.0.0' ? 'localhost' : host)

const makeYourShop = (address: string): string =>
  `This database holds no shop yet. Make yours on this machine: ${address}`

const demoSignIn = (): string[] => [
  'The demo shop. Sign in at the desk with name and password, on a tablet with a PIN:',
  ...Object.values(people).map(
    ({ name, signInName, roles, password, pin }) =>
      `  ${signInName.padEnd(11)} ${password.padEnd(26)} PIN ${pin}   ${name}, ${roles.join(', ')}`,
  ),
  'A tablet needs a code first: sign in at the desk, open Add a tablet, and type the code on the tablet.',
]

/** Says what is being done only when it takes longer than a second. */
export const slowly = async <T>(
  say: (line: string) => void,
  words: string,
  work: () => Promise<T>,
): Promise<T> => {
  const timer = setTimeout(() => say(`${words} …`), 1_000)
  try {
    return await work()
  } finally {
    clearTimeout(timer)
  }
}
