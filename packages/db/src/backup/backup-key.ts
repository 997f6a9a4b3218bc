import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { syncFolder } from '../embedded/sync-folder.ts'
import { BackupProblem } from './backup-problem.ts'

const fileOf = (dataFolder: string): string => join(dataFolder, 'backup-recipients.txt')

/** Whether a key was made for the backups of a data folder; `readRecipients` checks what it is. */
export const hasRecipients = (dataFolder: string): boolean => linesIn(fileOf(dataFolder)).length > 0

/**
 * For whom the backups of a data folder are encrypted, one line each; none: no key was made yet. Whoever has only
 * recipients can make backups and open none.
 */
export async function readRecipients(dataFolder: string): Promise<string[]> {
  const file = fileOf(dataFolder)
  const recipients = linesIn(file)
  if (recipients.length === 0) return []
  const { Encrypter } = await import('age-encryption')
  for (const recipient of recipients) {
    try {
      new Encrypter().addRecipient(recipient)
    } catch (cause) {
      throw new BackupProblem(
        `${file} holds a line that is no recipient (each begins with age1). Put the file back, or make a new key: npm run backup:key -- --new`,
        { cause },
      )
    }
  }
  return recipients
}

/** Makes a key, keeps its recipient in the data folder in place of earlier ones, and gives its identity to be kept elsewhere. */
export async function makeBackupKey(
  dataFolder: string,
): Promise<{ readonly identity: string; readonly recipient: string }> {
  const { generateX25519Identity, identityToRecipient } = await import('age-encryption')
  const identity = await generateX25519Identity()
  const recipient = await identityToRecipient(identity)
  writeRecipients(dataFolder, [recipient])
  return { identity, recipient }
}

/**
 * Has a restored data folder go on with backups for the key that opened it. It is taken from the identities and not from the
 * backup, into which another recipient could have been put.
 */
export async function keepRecipientsOf(identities: readonly string[], dataFolder: string): Promise<void> {
  const { identityToRecipient } = await import('age-encryption')
  writeRecipients(dataFolder, await Promise.all(identities.map((identity) => identityToRecipient(identity))))
}

function writeRecipients(dataFolder: string, recipients: readonly string[]): void {
  mkdirSync(dataFolder, { recursive: true, mode: 0o700 })
  const file = fileOf(dataFolder)
  writeFileSync(`${file}.new`, `${recipients.join('\n')}\n`, { mode: 0o600, flush: true })
  renameSync(`${file}.new`, file)
  syncFolder(dataFolder)
}

/** The identities of a key file: lines that begin with AGE-SECRET-KEY; others, such as comments, are passed over. */
export function readIdentities(file: string): string[] {
  if (!existsSync(file)) throw new BackupProblem(`There is no key file ${file}.`)
  const identities = linesOf(readFileSync(file, 'utf8')).filter((line) => line.startsWith('AGE-SECRET-KEY-'))
  if (identities.length === 0)
    throw new BackupProblem(
      `${file} holds no identity. It is the line that begins with AGE-SECRET-KEY-, as npm run backup:key showed it.`,
    )
  return identities
}

const linesIn = (file: string): string[] => (existsSync(file) ? linesOf(readFileSync(file, 'utf8')) : [])

function linesOf(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
}
