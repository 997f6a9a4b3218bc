import { withClient } from '@bayledger/db/with-client'
import type { TestApp } from './app.ts'

/** Changes one row behind the program's back: as a superuser, with every trigger off. */
export const alter = (
  { adminUrl }: Pick<TestApp, 'adminUrl'>,
  statement: string,
  values: readonly unknown[],
): Promise<void> =>
  withClient(adminUrl, async (admin) => {
    await admin.query("set session_replication_role = 'replica'")
    const { rowCount } = await admin.query(statement, [...values])
    if (rowCount !== 1) throw new Error(`${rowCount} rows were altered in place of one`)
  })
