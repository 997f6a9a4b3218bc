import type { Pool } from 'pg'

/** Keeps that a report is stamped: by a token beside it, or, without one, in its file. The first note of a report stays. */
export const noteStamp = async (
  pool: Pool,
  note: {
    readonly shopId: string
    readonly number: string
    readonly token: Uint8Array | null
    readonly at: Date
  },
): Promise<void> => {
  await pool.query({
    name: 'note-report-stamp',
    text: `insert into report_stamps (shop_id, number, token, noted_at) values ($1, $2, $3, $4) on conflict do nothing`,
    values: [note.shopId, note.number, note.token && Buffer.from(note.token), note.at],
  })
}

/** Reports of every shop, sealed since a moment, of which nobody has noted a stamp and whose files are there; the oldest first. */
export const listReportsToStamp = async (
  pool: Pool,
  since: Date,
  most: number,
): Promise<{ readonly shopId: string; readonly number: string; readonly sha256: string }[]> => {
  const { rows } = await pool.query<{ shopId: string; number: string; sha256: string }>({
    name: 'reports-to-stamp',
    text: `select shop_id as "shopId", number, sha256 from sealed_reports as report
      where shop_id in (select id from shops) and sealed_at >= $1
        and not exists (select from report_stamps as stamp where stamp.shop_id = report.shop_id and stamp.number = report.number)
        and exists (select from blobs where blobs.shop_id = report.shop_id and blobs.sha256 = report.sha256)
      order by sealed_at, number limit $2`,
    values: [since, most],
  })
  return rows
}
