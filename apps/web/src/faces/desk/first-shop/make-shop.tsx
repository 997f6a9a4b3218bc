import { type FirstShopContent, makeFirstShop } from '@bayledger/contract/first-shop'
import { signInAtDesk } from '@bayledger/contract/sessions'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { useEffect, useRef, useState } from 'react'
import { Link, useNavigate } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { patterns, shopPath } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { timeZones } from '../../../lib/time-zones.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { LongSelectField } from '../../../ui/long-select-field.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import {
  contentOf,
  emptyForm,
  type FirstShopForm,
  faultsInFirstShop,
  type TypedHours,
} from './first-shop-form.ts'

const taxable = [
  { value: 'parts', label: 'Parts' },
  { value: 'labor', label: 'Labor' },
  { value: 'tire', label: 'Tires' },
  { value: 'fee', label: 'Fees' },
] as const

type Editing = {
  form: FirstShopForm
  set: (change: Partial<FirstShopForm>) => void
  /** At a field: what is missing or wrong, once it was tried to make the shop. */
  faults: ReturnType<typeof faultsInFirstShop>
}

export function MakeShop({ start }: { start: Pick<FirstShopContent, 'hours' | 'prices'> }) {
  const [form, setForm] = useState(() => emptyForm(start, Intl.DateTimeFormat().resolvedOptions().timeZone))
  const client = useQueryClient()
  const navigate = useNavigate()
  const made = useMutation({
    mutationFn: async () => {
      const content = contentOf(form)
      const { shopId } = await call(makeFirstShop, { body: content })
      const { signInName: name, password } = content.owner
      return call(signInAtDesk, { body: { shopId, name, password } })
    },
    onSuccess: () => {
      client.clear()
      navigate(shopPath(), { replace: true })
    },
  })
  const page = useRef<HTMLFormElement>(null)
  const [tries, setTries] = useState(0)
  // After a try the first field at fault has the focus.
  useEffect(() => {
    if (tries > 0)
      page.current?.querySelector<HTMLElement>('.field:has(.field-fault) :is(input, select)')?.focus()
  }, [tries])
  const faults = faultsInFirstShop(form)
  const editing = {
    form,
    set: (change: Partial<FirstShopForm>) => setForm((before) => ({ ...before, ...change })),
    faults: tries === 0 ? {} : faults,
  }
  return (
    <form
      ref={page}
      className="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        setTries(tries + 1)
        if (Object.keys(faults).length === 0 && !made.isPending) made.mutate()
      }}
    >
      <p>All of it can be changed later. Whoever knows the owner’s password can change everything.</p>
      <ShopFields {...editing} />
      <PriceFields {...editing} />
      <OwnerFields {...editing} />
      {made.isError ? <ProblemNotice problem={problemText(made.error)} /> : null}
      {made.isError && isCallProblem(made.error, 'SHOP_MADE_BEFORE') ? (
        <p>
          <Link to={patterns.deskSignIn}>Sign in at the desk</Link>
        </p>
      ) : null}
      <Button type="submit" look="wide" busy={made.isPending}>
        Make the shop and sign in
      </Button>
    </form>
  )
}

function ShopFields({ form, set, faults }: Editing) {
  return (
    <Section title="Shop and place">
      <div className="first-shop-fields">
        <TextField
          label="Name of the shop"
          hint="As customers read it on their reports."
          autoFocus
          autoComplete="organization"
          maxLength={120}
          fault={faults.shopName}
          value={form.shopName}
          onChange={(shopName) => set({ shopName })}
        />
        <TextField
          label="Name of the place"
          hint="As your people say it, for example its street. You can add more places later."
          autoComplete="off"
          maxLength={80}
          fault={faults.placeName}
          value={form.placeName}
          onChange={(placeName) => set({ placeName })}
        />
        <LongSelectField
          label="Time zone"
          options={timeZones}
          fault={faults.timeZone}
          value={form.timeZone}
          onChange={(timeZone) => set({ timeZone })}
        />
        <NumberField
          label="Altitude"
          hint="Pressures are computed with it. A map shows it."
          unit="ft"
          fault={faults.altitudeFeet}
          value={form.altitudeFeet}
          onChange={(altitudeFeet) => set({ altitudeFeet })}
        />
        <DayHours
          days="Monday to Friday"
          fault={faults.weekdays}
          typed={form.weekdays}
          onChange={(weekdays) => set({ weekdays })}
        />
        <DayHours
          days="Saturday"
          fault={faults.saturday}
          typed={form.saturday}
          onChange={(saturday) => set({ saturday })}
        />
        <DayHours
          days="Sunday"
          fault={faults.sunday}
          typed={form.sunday}
          onChange={(sunday) => set({ sunday })}
        />
      </div>
    </Section>
  )
}

type DayHoursProps = {
  days: string
  fault: string | undefined
  typed: TypedHours
  onChange: (typed: TypedHours) => void
}

/** Both times of a day; left empty where the place is closed. */
function DayHours({ days, fault, typed, onChange }: DayHoursProps) {
  return (
    <fieldset className="first-shop-hours">
      <legend className="field-legend">{days}, empty if closed</legend>
      <TextField
        label="Opens"
        type="time"
        fault={fault}
        value={typed.opens}
        onChange={(opens) => onChange({ ...typed, opens })}
      />
      <TextField
        label="Closes"
        type="time"
        value={typed.closes}
        onChange={(closes) => onChange({ ...typed, closes })}
      />
    </fieldset>
  )
}

function PriceFields({ form, set, faults }: Editing) {
  return (
    <Section title="Labor and tax">
      <div className="first-shop-fields">
        <NumberField
          label="Labor rate"
          unit="$ an hour"
          fault={faults.laborDollars}
          value={form.laborDollars}
          onChange={(laborDollars) => set({ laborDollars })}
        />
        <NumberField
          label="Sales tax"
          hint="Ask your tax office; this program does not know the rate of a place."
          unit="%"
          fault={faults.taxPercent}
          value={form.taxPercent}
          onChange={(taxPercent) => set({ taxPercent })}
        />
        <CheckGroup
          label="Tax is charged on"
          options={taxable}
          values={taxable.map(({ value }) => value).filter((value) => form.taxedClasses.includes(value))}
          onChange={(taxedClasses) => set({ taxedClasses })}
        />
      </div>
    </Section>
  )
}

function OwnerFields({ form, set, faults }: Editing) {
  return (
    <Section title="Owner: you">
      <div className="first-shop-fields">
        <TextField
          label="Your name"
          autoComplete="name"
          maxLength={80}
          fault={faults.ownerName}
          value={form.ownerName}
          onChange={(ownerName) => set({ ownerName })}
        />
        <TextField
          label="Sign-in name"
          hint="Small letters, digits, dots and hyphens."
          autoComplete="username"
          autoCapitalize="none"
          maxLength={31}
          fault={faults.signInName}
          value={form.signInName}
          onChange={(signInName) => set({ signInName })}
        />
        <TextField
          label="Password"
          hint="At least 12 characters. A few words with spaces are easy to type. Once you are signed in, print a code under your name: it sets a new password if you lose this one."
          type="password"
          autoComplete="new-password"
          fault={faults.password}
          value={form.password}
          onChange={(password) => set({ password })}
        />
        <TextField
          label="Password again"
          type="password"
          autoComplete="new-password"
          fault={faults.passwordAgain}
          value={form.passwordAgain}
          onChange={(passwordAgain) => set({ passwordAgain })}
        />
        <TextField
          label="PIN"
          hint="Six digits, for tablets and for a second person’s check. Not 123456 and the like."
          type="password"
          inputMode="numeric"
          autoComplete="off"
          maxLength={6}
          fault={faults.pin}
          value={form.pin}
          onChange={(pin) => set({ pin })}
        />
        <TextField
          label="PIN again"
          type="password"
          inputMode="numeric"
          autoComplete="off"
          maxLength={6}
          fault={faults.pinAgain}
          value={form.pinAgain}
          onChange={(pinAgain) => set({ pinAgain })}
        />
      </div>
    </Section>
  )
}
