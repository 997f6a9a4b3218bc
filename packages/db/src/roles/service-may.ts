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
  received_photos: append,
  sealed_reports: append,
  report_stamps: append,
  signing_keys: append,
  digests: append,
  erasures: ['select'],
  legal_holds: edit,
  refused_entries: edit,
  second_person_proofs: append,
  device_keys: append,

  // What entries can rebuild. A rebuild runs as the owner.
  order_heads: edit,
  seen_sensors: append,
  wrench_cycles: append,
  stock_movements: append,

  // Kept by triggers, with their owner's rights.
  search_tokens: ['select'],

  // What moves stock and no order wrote.
  stock_changes: append,

  // Parts of photos that are still arriving.
  photo_pieces: all,

  // Versions that orders rely on by value.
  sheet_versions: append,
  setting_versions: append,

  // Who changed what of the registers below.
  record_versions: append,

  // The shop and its registers.
  shops: edit,
  locations: edit,
  staff: edit,
  devices: edit,
  order_holders: all,
  enrollment_codes: edit,
  sessions: edit,
  sign_in_failures: all,
  known_browsers: edit,
  second_steps: all,
  recovery_codes: all,
  owner_codes: all,
  passkeys: all,
  passkey_challenges: all,
  // Forgotten after 400 days by a trigger, with its owner's rights.
  security_events: append,
  customers: edit,
  vehicles: edit,
  record_merges: edit,
  write_up_drafts: all,
  sheets: edit,
  instruments: edit,
  stock_items: edit,
  messages: edit,
  message_choices: append,
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
  'received_photos',
  'sealed_reports',
  'second_person_proofs',
  'device_keys',
  'digests',
  'erasures',
] as const
