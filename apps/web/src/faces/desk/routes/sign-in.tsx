import { listShops, type Session, signInAtDesk } from '@bayledger/contract/sessions'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { type ReactNode, useState } from 'react'
import { Navigate, useLocation, useNavigate } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { pathAfterSignIn, patterns } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import './sign-in.css'

export function SignInRoute() {
  const [shopId, setShopId] = useState<string | null>(null)
  const [name, setName] = useState('')
  const [password, setPassword] = useState('')
  const [code, setCode] = useState<string | null>(null)
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  /** Something that is done in place of typing name and password, or after it. */
  const [instead, setInstead] = useState<ReactNode>(null)
  const [said, setSaid] = useState<string | null>(null)
  const listed = useQuery({ queryKey: ['shops'], queryFn: () => call(listShops, {}) }).data?.shops
  const shops = listed ?? []
  const isShopMissing = shops.length > 1 && shopId === null
  const client = useQueryClient()
  const navigate = useNavigate()
  const { search } = useLocation()

  const leave = () => {
    client.clear()
    navigate(pathAfterSignIn(search), { replace: true })
  }
  const enter = async (by: () => Promise<Session>) => {
    setBusy(true)
    setProblem(null)
    setSaid(null)
    try {
      const { awaits, staff } = await by()
      if (awaits === undefined) return leave()
      const { FinishSignIn } = await import('./finish-sign-in.tsx')
      setInstead(<FinishSignIn awaits={awaits} staffId={staff.staffId} given={password} onDone={leave} />)
    } catch (thrown) {
      const isStep =
        isCallProblem(thrown, 'SECOND_STEP_NEEDED') || isCallProblem(thrown, 'SECOND_STEP_REFUSED')
      setProblem(thrown)
      setCode(isStep ? '' : null)
      if (!isStep) setPassword('')
    } finally {
      setBusy(false)
    }
  }
  const byPassword = () =>
    call(signInAtDesk, {
      body: { ...(shopId === null ? {} : { shopId }), name, password, ...(code === null ? {} : { code }) },
    })
  const byPasskey = async () => {
    const { signInWithPasskey } = await import('../passkeys.ts')
    return signInWithPasskey(shopId)
  }

  const openOwnerCode = async () => {
    setProblem(null)
    setPassword('')
    try {
      const { EnterByOwnerCode } = await import('./enter-by-owner-code.tsx')
      const onSet = (whose: string) => {
        setName(whose)
        setSaid('The new password is set. Sign in with it.')
        setInstead(null)
      }
      setInstead(
        <EnterByOwnerCode shopId={shopId} typed={name} onSet={onSet} onBack={() => setInstead(null)} />,
      )
    } catch (thrown) {
      setProblem(thrown)
    }
  }

  if (listed?.length === 0) return <Navigate to={patterns.firstShop} replace />
  return (
    <main className="desk-door">
      <title>Sign in · Bayledger desk</title>
      <h1>Bayledger desk</h1>
      {instead === null ? (
        <form
          className="stack"
          onSubmit={(event) => {
            event.preventDefault()
            void enter(byPassword)
          }}
        >
          {shops.length > 1 ? (
            <SelectField
              label="Shop"
              value={shopId}
              onChange={setShopId}
              unchosen="Choose your shop"
              options={shops.map((shop) => ({ value: shop.shopId, label: shop.name }))}
            />
          ) : null}
          <TextField label="Sign-in name" autoComplete="username" autoFocus value={name} onChange={setName} />
          <TextField
            label="Password"
            type="password"
            autoComplete="current-password"
            value={password}
            onChange={setPassword}
          />
          {code === null ? null : (
            <TextField
              label="Code of your authenticator app, or a recovery code"
              autoComplete="one-time-code"
              autoFocus
              exact
              value={code}
              onChange={setCode}
            />
          )}
          {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
          <StatusLine>{said}</StatusLine>
          <Button
            type="submit"
            look="wide"
            busy={busy}
            whyNot={
              isShopMissing
                ? 'Choose your shop.'
                : name.trim() === '' || password === ''
                  ? 'Type your name and your password.'
                  : code === ''
                    ? 'Type the code.'
                    : undefined
            }
          >
            Sign in
          </Button>
          <Button
            busy={busy}
            whyNot={isShopMissing ? 'Choose your shop.' : undefined}
            onClick={() => void enter(byPasskey)}
          >
            Sign in with a passkey
          </Button>
          <Button
            whyNot={isShopMissing ? 'Choose your shop.' : undefined}
            onClick={() => void openOwnerCode()}
          >
            I lost my password and have a printed code
          </Button>
        </form>
      ) : (
        instead
      )}
    </main>
  )
}
