type Right = 'select' | 'insert' | 'update' | 'delete'

/** Written once: the service may add and read, never change. */
const append: readonly Right[] = ['select', 'insert']
const edit: readonly Right[] = ['select', 'insert', 'update']
const all: readonly Right[] = ['select', 'insert', 'update', 'delete']

/**
 * What the service's database role may do, table by table; it owns none of them. A table that is missing here is one
 * that the service cannot even read: migrating stops until it is added.
 */
export const serviceMay: Readonly<Record<string, readonly Right[]>> = {
  // The record: entries, their sides, and what was sealed. Another role does the erasing.
  entries: append,
  personal_texts: append,
  contact_sides: append,
  money_sides: append,
  shown_sides: append,
  blobs: append,
  sealed_reports: append,
  digests: append,
  erasures: ['select'],
  refused_entries: edit,
  second_person_proofs: append,

  // What entries can rebuild. A rebuild runs as the owner.
  order_heads: edit,
  seen_sensors: append,
  wrench_cycles: append,
  stock_movements: append,

  // Versions that orders rely on by value.
  sheet_versions: append,
  setting_versions: append,

  // The shop and its registers.
  shops: edit,
  locations: edit,
  staff: edit,
  devices: edit,
  enrollment_codes: edit,
  sessions: edit,
  sign_in_failures: all,
  customers: edit,
  vehicles: edit,
  sheets: edit,
  instruments: edit,
  stock_items: edit,
  customer_links: edit,
  link_openings: append,
  link_sessions: edit,
  idempotency_keys: all,
  order_numbers: edit,

  // Which migrations were applied: read at start, written by the owner.
  _prisma_migrations: ['select'],
}

/** Tables of which a changed or removed row would be a forgery: the service refuses to run as a role that could. */
export const forgeable = [
  'entries',
  'personal_texts',
  'contact_sides',
  'money_sides',
  'shown_sides',
  'blobs',
  'sealed_reports',
  'second_person_proofs',
  'digests',
  'erasures',
] as const
