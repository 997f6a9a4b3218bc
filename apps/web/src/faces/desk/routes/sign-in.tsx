export function SignInRoute() {
  return (
    <main>
      <title>Sign in · Bayledger desk</title>
      <h1>Sign in</h1>
    </main>
  )
}
