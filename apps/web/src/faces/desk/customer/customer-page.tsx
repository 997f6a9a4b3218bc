import { type Customer, getCustomer } from '@bayledger/contract/customers'
import { listVehicles } from '@bayledger/contract/vehicles'
import { languageNames } from '@bayledger/wording/language-names'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useEffect } from 'react'
import { Link, useNavigate, useParams } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { customerPath, vehiclePath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Line, Lines, Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { MergesPart } from '../records/merges-part.tsx'
import { customerKind } from '../records/record-kind.ts'
import { useFocusedTitle } from '../use-focused-title.ts'
import { ChoicesPart } from './choices-part.tsx'
import { OwnDataPart } from './own-data-part.tsx'
import { PrivacyParts } from './privacy-parts.tsx'

/** What the shop keeps of one customer. The address of a merged record leads to the one that it is part of. */
export function CustomerRoute() {
  const { customerId = '' } = useParams()
  const navigate = useNavigate()
  const customer = useQuery({
    queryKey: ['customer', customerId],
    queryFn: ({ signal }) => call(getCustomer, { params: { customerId }, signal }),
    staleTime: 0,
  })
  const now = customer.data?.customerId
  useEffect(() => {
    if (now !== undefined && now !== customerId) navigate(customerPath(now), { replace: true })
  }, [now, customerId, navigate])
  if (customer.data !== undefined) return <OneCustomer customer={customer.data} />
  return (
    <>
      <title>Customer · Bayledger desk</title>
      {customer.isError ? (
        <ProblemNotice problem={problemText(customer.error)} onRetry={() => void customer.refetch()} />
      ) : (
        <StatusLine>Reading what the shop keeps of this customer.</StatusLine>
      )}
    </>
  )
}

function OneCustomer({ customer }: { customer: Customer }) {
  const title = useFocusedTitle()
  const { customerId, name, phone, email, language, mayCall, mayText, mayEmail } = customer
  const ways = [mayCall ? 'called' : null, mayText ? 'texted' : null, mayEmail ? 'e-mailed' : null].filter(
    (way) => way !== null,
  )
  return (
    <>
      <title>{`${name} · Bayledger desk`}</title>
      <h1 ref={title} tabIndex={-1}>
        {name}
      </h1>
      <Lines>
        <Line name="Telephone">{phone ? telephoneWords(phone) : 'not known'}</Line>
        <Line name="E-mail">{email ?? 'not known'}</Line>
        <Line name="Page, estimate and report in">{languageNames[language]}</Line>
        <Line name="About a service">
          {ways.length === 0 ? 'not agreed to' : `may be ${ways.join(', ')}`}
        </Line>
      </Lines>
      <VehiclesPart customerId={customerId} />
      <ChoicesPart customerId={customerId} />
      <MergesPart kind={customerKind} id={customerId} />
      <OwnDataPart customerId={customerId} />
      <PrivacyParts customerId={customerId} />
    </>
  )
}

function VehiclesPart({ customerId }: { customerId: string }) {
  const vehicles = useQuery({
    queryKey: ['vehicles', customerId],
    queryFn: ({ signal }) => call(listVehicles, { query: { customerId }, signal }),
  })
  return (
    <Section title="Vehicles">
      {vehicles.isError ? <ProblemNotice problem={problemText(vehicles.error)} /> : null}
      {vehicles.data?.vehicles.length === 0 ? <p>No vehicle of this customer is on file.</p> : null}
      <Lines>
        {vehicles.data?.vehicles.map(({ vehicleId, plate, description, color }) => (
          <Line key={vehicleId} name={plate ?? 'no plate'}>
            <Link to={vehiclePath(vehicleId)}>
              {[description, color].filter((part) => part !== null).join(', ')}
            </Link>
          </Line>
        ))}
      </Lines>
    </Section>
  )
}
