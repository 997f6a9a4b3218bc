// Plain JavaScript, so that any Node can run it and say in words what would else fail with a riddle.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < 24 || (major === 24 && minor < 7)) {
  console.error(
    `Bayledger runs on Node 24.7 or newer; this is ${process.versions.node}. On Linux (x64, arm64), Windows (x64) and ` +
      'macOS (x64) "npm ci" brings it along: run it again without --omit=optional. Elsewhere install Node 24 first.',
  )
  process.exit(1)
}
