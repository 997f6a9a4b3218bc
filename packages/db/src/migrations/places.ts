import { join } from 'node:path'

const ROOT = join(import.meta.dirname, '../../../..')

export const SCHEMA_FOLDER = join(ROOT, 'prisma')
export const SCHEMA_FILE = join(SCHEMA_FOLDER, 'schema.prisma')
export const MIGRATIONS_FOLDER = join(SCHEMA_FOLDER, 'migrations')
export const CONFIG_FILE = join(SCHEMA_FOLDER, 'prisma.config.ts')
export const GENERATED_FOLDER = join(ROOT, 'packages/db/src/generated')
export const DATA_FOLDER = join(ROOT, 'data')
