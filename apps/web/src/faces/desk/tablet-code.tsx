import { createEnrollmentCode } from '@bayledger/contract/devices'
import { useMutation, useQuery } from '@tanstack/react-query'
import { settingsQuery } from '../../features/settings/queries.ts'
import { call } from '../../lib/api-client.ts'
import { clockTime } from '../../lib/format.ts'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../../ui/button.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { Section } from '../../ui/section.tsx'
import { useShopClock } from './shop-clock.ts'
import './tablet-code.css'

/** Makes the code that enrolls a tablet; someone reads it off this screen and types it on the tablet. */
export function TabletCode() {
  const settings = useQuery(settingsQuery)
  const clock = useShopClock()
  const code = useMutation({
    mutationFn: (locationId: string) => call(createEnrollmentCode, { body: { locationId } }),
  })
  return (
    <Section title="New code: works once, within ten minutes">
      <div className="stack">
        <p>
          Open <span className="exact">{window.location.origin}/bay</span> on the tablet and type the code
          there.
        </p>
        {isThisMachineOnly(window.location.hostname) ? (
          <p>
            That address works on this machine only. For a tablet, stop the service, run{' '}
            <span className="exact">npm run certificate -- </span> with the name of this machine, start the
            service again, and open the desk at the address that it prints.
          </p>
        ) : null}
        <div className="row">
          {(settings.data?.locations ?? []).map((location) => (
            <Button
              key={location.locationId}
              look="main"
              busy={code.isPending}
              onClick={() => code.mutate(location.locationId)}
            >
              New code for {location.name}
            </Button>
          ))}
        </div>
        {code.isError ? <ProblemNotice problem={problemText(code.error)} /> : null}
        {code.data === undefined ? null : (
          <p role="status" className="desk-code">
            <span className="exact">{code.data.code}</span>
            <span className="quiet"> good until {clockTime(code.data.expiresAt, clock)}</span>
          </p>
        )}
      </div>
    </Section>
  )
}

/** What a tablet that is told to open it would look for on itself. */
const isThisMachineOnly = (host: string): boolean => /^(localhost|127(\.\d+){3}|\[::1\])$/.test(host)
