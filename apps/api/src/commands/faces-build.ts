import { join } from 'node:path'

const root = join(import.meta.dirname, '../../../..')

/** What builds the three faces where they are missing or old, and finds in no time that they are neither. */
export const facesBuild = {
  command: join(root, 'node_modules/.bin/turbo'),
  arguments: ['run', 'build', '--output-logs=errors-only', '--no-update-notifier'],
} as const
