/** What the network and PostgreSQL say of an address that is wrong (manual, appendix A), and what to do. */
const databaseWords: Readonly<Record<string, string>> = {
  ECONNREFUSED: 'nothing answers there. Start it, or correct host and port',
  ENOTFOUND: 'there is no such host. Correct it',
  ETIMEDOUT: 'nothing answers there. Look at the network between, or correct host and port',
  '28P01': 'it refuses the name or the password. Correct them',
  '28000': 'it does not let this role in from here. Correct the role, or its pg_hba.conf',
  '3D000': 'it has no such database. Make it, or correct the name',
}

/** A table or a column that is not there (PostgreSQL's manual, appendix A). */
const lacking = ['42P01', '42703']

/**
 * Why the service or a command ends, for the terminal. A problem that was foreseen says what to do and needs no stack. An
 * address is never printed: it may hold a password.
 */
export const failureWords = (error: unknown): string => {
  if (!(error instanceof Error)) return String(error)
  if (error.name.endsWith('Problem')) return error.message
  const code = 'code' in error ? String(error.code) : ''
  if (code === 'EADDRINUSE')
    return `The port is taken by another program: ${error.message}. Choose another with PORT=4311 npm start, or stop that one.`
  if (lacking.includes(code))
    return `The database lacks what this version needs (${error.message}). Start the service once, which brings it up to date; then run this again.`
  const words = databaseWords[code]
  // What the system says, such as ENOSPC, is words enough.
  if (words === undefined) return code.startsWith('E') ? error.message : (error.stack ?? error.message)
  return `The database of DATABASE_URL or DATABASE_OWNER_URL cannot be reached: ${words}, then start again.`
}
