import { openClient } from '@bayledger/db/client'
import { bringUpToDate, openShopDatabase } from '@bayledger/db/shop-database'
import { seedBase } from '../../../../prisma/seeds/base.ts'
import { readConfig } from '../config.ts'
import { hashPassword } from '../features/sessions/service/hash-password.ts'

/**
 * `npm run shop:new -- "<shop>" "<owner>" <sign-in name> <altitude in feet> <time zone>`: makes an empty shop in an
 * empty database, with an owner whose password is shown here and nowhere else. With `--another` first, it adds a shop
 * beside those that the database holds; each has its own people, customers, prices and orders.
 */
const besideOthers = process.argv[2] === '--another'
const [shopName = '', ownerName = '', signInName = '', altitude = '', timeZone = ''] = process.argv.slice(
  besideOthers ? 3 : 2,
)

const faults = [
  shopName === '' ? 'The shop needs a name.' : null,
  ownerName === '' ? 'The owner needs a name.' : null,
  /^[a-z][a-z0-9.-]{1,30}$/.test(signInName)
    ? null
    : 'The sign-in name has small letters, digits, dots and hyphens.',
  /^-?\d{1,5}$/.test(altitude) && Number(altitude) >= -1_500 && Number(altitude) <= 20_000
    ? null
    : 'The altitude is a whole number of feet from -1500 to 20000.',
  Intl.supportedValuesOf('timeZone').includes(timeZone)
    ? null
    : 'The time zone is a name such as America/New_York.',
].filter((fault) => fault !== null)

if (faults.length > 0) {
  console.error(
    `${faults.join('\n')}\n\n  npm run shop:new -- "Corner Tire" "A. Owner" owner 820 America/New_York`,
  )
  process.exit(2)
}

const config = readConfig()
const say = (line: string): void => console.log(line)
const database = await openShopDatabase(config, say, 'refuse')
await bringUpToDate(database)
const prisma = openClient(database.serviceUrl)
const seeded = await seedBase({
  prisma,
  now: new Date().toISOString(),
  shop: { name: shopName, altitudeFeet: Number(altitude), timeZone },
  owner: { name: ownerName, signInName },
  hashPassword,
  besideOthers,
})
await prisma.$disconnect()
await database.stop()

if (seeded.made) {
  say(`Made ${shopName}. Sign in at the desk as ${signInName} with the password ${seeded.ownerPassword}`)
  say('It is shown only now. Start the service: npm start')
} else {
  console.error(
    'This database holds a shop already; nothing was changed. Add another beside it with --another, or choose another database with DATA_FOLDER or DATABASE_URL.',
  )
  process.exitCode = 1
}
