import { randomBytes } from 'node:crypto'
import { openClient } from '@bayledger/db/client'
import { bringUpToDate } from '@bayledger/db/shop-database'
import { seedBase } from '../../../../prisma/seeds/base.ts'
import { firstHours } from '../../../../prisma/seeds/first-settings.ts'
import { firstPasswordUntil } from '../features/sessions/service/first-password.ts'
import { hashPassword } from '../features/sessions/service/hash-password.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run shop:new -- "<shop>" "<owner>" <sign-in name> <altitude in feet> <time zone>`: makes an empty shop in an
 * empty database, also while the service runs, with an owner whose first password is shown here and nowhere else. With `--another` first, it adds a
 * shop beside those that the database holds; each has its own people, customers, prices and orders.
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

const password = randomBytes(12).toString('base64url')
const now = new Date()
const say = (line: string): void => console.log(line)
await onShop(
  async ({ database }) => {
    await bringUpToDate(database)
    const prisma = openClient(database.serviceUrl)
    const seeded = await seedBase({
      prisma,
      now: now.toISOString(),
      shop: {
        name: shopName,
        placeName: shopName,
        altitudeFeet: Number(altitude),
        timeZone,
        hours: firstHours,
      },
      owner: {
        name: ownerName,
        signInName,
        password,
        firstPasswordUntil: firstPasswordUntil(now),
        pin: null,
      },
      hashPassword,
      besideOthers,
    }).finally(() => prisma.$disconnect())

    if (seeded.made) {
      say(`Made ${shopName}. Sign in at the desk as ${signInName} with the password ${password}`)
      say('It is shown only now and good for seven days; the desk asks for one of your own at the sign-in.')
      say(
        'Under your name at the desk set your PIN, and print a code that sets a new password if you lose yours.',
      )
      say(`Without it, if the password is lost: npm run owner:recover -- ${signInName}`)
      say('Start the service, unless it runs: npm start')
    } else {
      console.error(
        'This database holds a shop already; nothing was changed. Add another beside it with --another, or choose another database with DATA_FOLDER or DATABASE_URL.',
      )
      process.exitCode = 1
    }
  },
  { whereNone: 'make' },
)
