import { ProblemNotice } from '../../ui/problem-notice.tsx'
import './customer.css'

/** One column, read from the top: no account, no menu. */
export function CustomerPage({ secret }: { secret: string | null }) {
  return (
    <main className="customer">
      {secret === null ? (
        <ProblemNotice
          problem={{
            title: 'This address is not whole.',
            detail: 'Open the link again from the message that the shop sent you, or call the shop.',
          }}
        />
      ) : (
        <h1>Your vehicle</h1>
      )}
    </main>
  )
}
