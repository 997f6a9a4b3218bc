import { useQuery } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import { floorQuery, refreshFloorRows } from '../../../features/floor/queries.ts'
import { useLiveUpdates } from '../../../features/ledger/live-updates.ts'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { clockTime } from '../../../lib/format.ts'
import { Button } from '../../../ui/button.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { rememberedPlace } from '../write-up/desk-place.ts'
import { WallBoard } from './wall-board.tsx'
import { wallPages } from './wall-rows.ts'

/** The wall also reads the floor at this interval, so that it notices when the server does not answer. */
const askEveryMs = 15_000
const turnEveryMs = 8_000

/** The floor on a screen on the wall, for everybody to read: it follows by itself, and says when it cannot. */
export function WallRoute() {
  useLiveUpdates(refreshFloorRows)
  const clock = useShopClock()
  const settings = useQuery(settingsQuery)
  const floor = useQuery({ ...floorQuery, refetchInterval: askEveryMs, refetchIntervalInBackground: true })
  const turn = useTurns(turnEveryMs)
  const here = rememberedPlace((settings.data?.locations ?? []).map(({ locationId }) => locationId))
  const rows = (floor.data?.rows ?? []).filter(({ locationId }) => here === null || locationId === here)
  const pages = wallPages(rows)
  const page = pages.length === 0 ? 0 : turn % pages.length
  const asOf = floor.data?.asOf ?? ''
  const isLost = floor.failureCount > 0 || floor.fetchStatus === 'paused'
  return (
    <main className="wall">
      <title>The floor on the wall · Bayledger desk</title>
      <div className="wall-head">
        <h1 className="wall-cut">
          {settings.data?.locations.find(({ locationId }) => locationId === here)?.name ?? 'The floor'}
        </h1>
        <StatusLine>
          {isLost
            ? `No connection. ${asOf === '' ? 'Nothing was read yet.' : `As of ${clockTime(asOf, clock)}.`}`
            : null}
        </StatusLine>
        <span>
          {pages.length < 2 || isLost ? null : `${page + 1} of ${pages.length} · `}
          {asOf === '' || isLost ? null : clockTime(asOf, clock)}
        </span>
        {document.fullscreenEnabled ? <FullScreen /> : null}
      </div>
      {floor.data === undefined ? null : <WallBoard rows={pages[page] ?? []} asOf={asOf} clock={clock} />}
    </main>
  )
}

function FullScreen() {
  const [isFull, setFull] = useState(document.fullscreenElement !== null)
  useEffect(() => {
    const follow = () => setFull(document.fullscreenElement !== null)
    document.addEventListener('fullscreenchange', follow)
    return () => document.removeEventListener('fullscreenchange', follow)
  }, [])
  if (isFull) return null
  return (
    <Button onClick={() => void document.documentElement.requestFullscreen().catch(() => undefined)}>
      Full screen
    </Button>
  )
}

/** How often an interval has passed since the page was opened. */
const useTurns = (ms: number): number => {
  const [turns, setTurns] = useState(0)
  useEffect(() => {
    const timer = setInterval(() => setTurns((before) => before + 1), ms)
    return () => clearInterval(timer)
  }, [ms])
  return turns
}
