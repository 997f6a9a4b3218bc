import { TextField } from '../../../ui/text-field.tsx'

type NewPasswordFieldsProps = {
  password: string
  again: string
  onPassword: (password: string) => void
  onAgain: (again: string) => void
  autoFocus?: boolean
}

/** A password of one's own, typed twice. */
export function NewPasswordFields({
  password,
  again,
  onPassword,
  onAgain,
  autoFocus = false,
}: NewPasswordFieldsProps) {
  const isNew = { type: 'password', autoComplete: 'new-password' } as const
  return (
    <>
      <TextField
        label="New password"
        {...isNew}
        autoFocus={autoFocus}
        value={password}
        onChange={onPassword}
      />
      <TextField label="New password again" {...isNew} value={again} onChange={onAgain} />
    </>
  )
}
