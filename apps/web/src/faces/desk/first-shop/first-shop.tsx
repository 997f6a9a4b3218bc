import { getFirstShop } from '@bayledger/contract/first-shop'
import { useQuery } from '@tanstack/react-query'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { patterns } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Sentence, StatusLine } from '../../../ui/sentence.tsx'
import { MakeShop } from './make-shop.tsx'
import './first-shop.css'

/** The page that makes the shop of an empty database; it opens on the machine itself, and only until there is a shop. */
export function FirstShopRoute() {
  const first = useQuery({
    queryKey: ['first-shop'],
    queryFn: ({ signal }) => call(getFirstShop, { signal }),
    // What is being typed must not be taken away by looking again.
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  })
  return (
    <main className="first-shop">
      <title>Make your shop · Bayledger desk</title>
      <h1>Make your shop</h1>
      {first.isPending ? <StatusLine>Looking whether there is a shop …</StatusLine> : null}
      {first.isError ? (
        <ProblemNotice problem={problemText(first.error)} onRetry={() => void first.refetch()} />
      ) : null}
      {first.data?.state === 'made' ? <MadeAlready /> : null}
      {first.data?.state === 'open' ? <MakeShop start={first.data} /> : null}
    </main>
  )
}

function MadeAlready() {
  return (
    <div className="stack">
      <Sentence>The shop is made. This page makes no other.</Sentence>
      <p>
        <Link to={patterns.deskSignIn}>Sign in at the desk</Link> with the name and password of its owner, or
        ask the owner for yours.
      </p>
    </div>
  )
}
