import { usePrefetchQuery, useQuery } from '@tanstack/react-query'
import { memo, useEffect, useState } from 'react'
import { Navigate, Outlet, useLocation } from 'react-router'
import { refreshFloorRows } from '../../../features/floor/queries.ts'
import { useLiveUpdates } from '../../../features/ledger/live-updates.ts'
import { sessionQuery } from '../../../features/people/queries.ts'
import { patterns } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { rulesQuery } from '../findings/use-diagnosis.ts'
import { useReadAhead } from '../kept/read-ahead.ts'
import { bayOutbox } from '../record/bay-outbox.ts'
import { usePrefetchAdmission } from '../record/refuse-here.ts'
import { useUndoable } from '../record/undo-store.ts'
import { useProgramUpdates } from '../shell/use-program-updates.ts'
import { deviceQuery } from './device-query.ts'
import { LockHead } from './lock-head.tsx'
import { openDoor, useDoor } from './lock-store.ts'
import { PinSignIn } from './pin-sign-in.tsx'
import { useIdleLock } from './use-idle-lock.ts'
import { useLocalSession } from './use-local-session.ts'

/** How long the door waits for the server's word on who is signed in, before it asks; it hears it afterwards too. */
const sessionMilliseconds = 1_500

/** Whether something has been going on for too long. */
const useImpatience = (isGoingOn: boolean): boolean => {
  const [isLong, setLong] = useState(false)
  useEffect(() => {
    setLong(false)
    if (!isGoingOn) return
    const timer = setTimeout(() => setLong(true), sessionMilliseconds)
    return () => clearTimeout(timer)
  }, [isGoingOn])
  return isLong
}

/**
 * Lets in an enrolled tablet with a person on it. While it is locked the work stays mounted behind, so that a
 * half-typed figure is still there for the next person who signs in.
 */
export function BayDoor() {
  const device = useQuery(deviceQuery)
  const session = useQuery({
    ...sessionQuery,
    retry: false,
    enabled: device.data !== undefined,
    refetchOnWindowFocus: false,
  })
  const door = useDoor()
  const { pathname } = useLocation()
  const person = session.data?.staff ?? null
  const isUndoOffered = useUndoable() !== null
  useProgramUpdates((person === null || pathname === patterns.bay) && !isUndoOffered)
  useIdleLock(door !== 'locked' && person !== null)
  const staffId = person?.staffId
  // What its writer left here goes out as soon as they are known again: after a reload, too.
  useEffect(() => {
    if (staffId !== undefined) bayOutbox.wake()
  }, [staffId])

  useLocalSession()
  const isWaitingLong = useImpatience(device.data !== undefined && session.isPending)

  if (isCallProblem(device.error, 'DEVICE_UNKNOWN') || isCallProblem(device.error, 'SESSION_MISSING'))
    return <Navigate to={patterns.enroll} replace />
  if (device.error !== null && (device.data === undefined || isCallProblem(device.error, 'TABLET_SHUT')))
    return (
      <main className="bay-step">
        <ProblemNotice problem={problemText(device.error)} onRetry={() => void device.refetch()} />
      </main>
    )
  if (device.data === undefined || (session.isPending && !isWaitingLong))
    return (
      <main className="bay-step">
        <StatusLine>Opening …</StatusLine>
      </main>
    )
  if (person === null) return <PinSignIn title="Who is here?" likely={null} />
  const isOpen = door === 'open'
  return (
    <>
      <div className="bay-behind" inert={!isOpen} hidden={!isOpen}>
        <Work isSeen={isOpen} />
      </div>
      {door === 'open' ? null : (
        <div className="bay-locked">
          <LockHead />
          {door === 'locked' ? (
            <PinSignIn title="Locked. Who is here?" likely={person} />
          ) : (
            <PinSignIn title="Who takes over?" likely={null} onLeave={openDoor} />
          )}
        </div>
      )}
    </>
  )
}

/** What the door hears is no reason to draw the screen behind it again. */
const Work = memo(function Work({ isSeen }: { isSeen: boolean }) {
  return (
    <>
      <Hearing isSeen={isSeen} />
      <Outlet />
    </>
  )
})

/** Subscribes to live updates and reads early what the work needs, before the network may drop. */
function Hearing({ isSeen }: { isSeen: boolean }) {
  useLiveUpdates(refreshFloorRows, isSeen)
  useReadAhead(isSeen)
  usePrefetchQuery(rulesQuery)
  usePrefetchAdmission()
  return null
}
