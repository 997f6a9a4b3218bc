import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { BackupProblem } from './backup-problem.ts'

/** A file or folder of a cluster, by its path below the data folder. */
export type ClusterFile =
  | { readonly kind: 'folder'; readonly path: string }
  | { readonly kind: 'file'; readonly path: string; readonly bytes: number }

/**
 * What PostgreSQL makes anew at its start or in recovery, so that only the folder itself is copied.
 *
 * @source PostgreSQL manual, 25.3.4 Making a Base Backup Using the Low Level API, "Backing Up the Data Directory".
 */
const EMPTY_FOLDERS = [
  'pg_wal',
  'pg_replslot',
  'pg_dynshmem',
  'pg_notify',
  'pg_serial',
  'pg_snapshots',
  'pg_stat_tmp',
  'pg_subtrans',
]
const LEFT_OUT = /^(postmaster\.(pid|opts)|backup_label.*|tablespace_map|pgsql_tmp.*|pg_internal\.init.*)$/
/** Read last, so that nothing in it is older than the files. */
const CONTROL_FILE = 'global/pg_control'

/** The files of a running cluster to copy, folders before what is in them, the control file last. */
export function listClusterFiles(cluster: string): ClusterFile[] {
  if (readdirSync(join(cluster, 'pg_tblspc')).length > 0)
    throw new BackupProblem(
      `${cluster} has tablespaces, which Bayledger does not make and does not back up. Move their tables back, then try again.`,
    )
  const found = walk(cluster, '')
  const isControl = ({ path }: ClusterFile) => path === CONTROL_FILE
  return [...found.filter((file) => !isControl(file)), ...found.filter(isControl)]
}

function walk(cluster: string, below: string): ClusterFile[] {
  return readdirSync(join(cluster, below)).flatMap((name): ClusterFile[] => {
    if (LEFT_OUT.test(name)) return []
    const path = below === '' ? name : `${below}/${name}`
    // A table that was dropped a moment ago takes its files along.
    const found = statSync(join(cluster, path), { throwIfNoEntry: false })
    if (found === undefined) return []
    if (found.isFile()) return [{ kind: 'file', path, bytes: found.size }]
    const inside = EMPTY_FOLDERS.includes(path) ? [] : walk(cluster, path)
    return [{ kind: 'folder', path }, ...inside]
  })
}
