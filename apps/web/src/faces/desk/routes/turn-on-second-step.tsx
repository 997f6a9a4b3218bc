import { Button } from '../../../ui/button.tsx'
import { PasskeysPart } from '../shop/passkeys-part.tsx'
import { SecondStepPart } from '../shop/second-step-part.tsx'

/** Where the shop asks everybody for a second step, whoever has none turns one on. */
export function TurnOnSecondStep({ staffId, onDone }: { staffId: string; onDone: () => unknown }) {
  return (
    <div className="stack">
      <p>
        Your shop asks everybody for a second step besides the password. Turn on the code at sign-in, for
        which you need an authenticator app on your telephone, or add a passkey. Then go on.
      </p>
      <SecondStepPart staffId={staffId} isOwn />
      <PasskeysPart staffId={staffId} isOwn />
      <Button look="wide" onClick={() => void onDone()}>
        Go on to the desk
      </Button>
    </div>
  )
}
