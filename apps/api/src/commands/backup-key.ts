import { makeBackupKey, readRecipients } from '@bayledger/db/backup/backup-key'
import { readConfig } from '../config.ts'

/**
 * `npm run backup:key`: makes the key for backups and shows its identity, which alone opens them. The machine keeps only
 * the recipient. `-- --new` makes another one; earlier backups still need the earlier identity.
 */
try {
  const { dataFolder } = readConfig()
  const known = await readRecipients(dataFolder)
  if (known.length > 0 && !process.argv.includes('--new')) {
    console.error(
      `A key was made already (${known.join(', ')}). Backups are encrypted for it. If its identity is lost, make a new one: npm run backup:key -- --new`,
    )
    process.exitCode = 1
  } else {
    const { identity, recipient } = await makeBackupKey(dataFolder)
    console.log(`Backups are encrypted from now on, for ${recipient}`)
    console.log('This line alone opens them. It is shown only now and is not kept on this machine:')
    console.log('')
    console.log(identity)
    console.log('')
    console.log('Print it, or save it to a file on a stick, and keep it where the machine is not.')
    if (known.length > 0) console.log('Keep the earlier one too: backups made before now need it.')
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 2
}
