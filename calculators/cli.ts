// Terminal face of the calculators: `node calculators/cli.ts help`.
//
// This file holds no types and no import statement: an older Node runs it as plain CommonJS. All it does is to
// hand over to a Node that reads TypeScript: the locked one of this project, or the running one if it is new enough.

Promise.all([import('node:child_process'), import('node:fs'), import('node:path')])
  .then(([{ spawnSync }, { existsSync, realpathSync }, { dirname, join }]) => {
    const folder = dirname(realpathSync(process.argv[1] || 'calculators/cli.ts'))
    const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
    const readsTypeScript = major > 22 || (major === 22 && minor >= 18)
    const packages = join(folder, '..', 'node_modules')
    const locked = ['node', 'node.exe']
      .map((name) => join(packages, 'node', 'bin', name))
      .find((path) => existsSync(path))
    const node = locked || (readsTypeScript ? process.execPath : undefined)
    if (node === undefined || !existsSync(join(packages, 'mathjs'))) {
      process.stderr.write(
        'The packages of this project are not installed yet: run `npm ci` in its folder first.\n',
      )
      process.exitCode = 1
      return
    }
    const result = spawnSync(
      node,
      [
        '--disable-warning=MODULE_TYPELESS_PACKAGE_JSON',
        join(folder, 'terminal', 'main.ts'),
        ...process.argv.slice(2),
      ],
      // What Node makes of the sources is kept: reading them anew takes half of each start or more.
      {
        stdio: 'inherit',
        env: { NODE_COMPILE_CACHE: join(packages, '.cache', 'clear-return', 'code'), ...process.env },
      },
    )
    if (result.error) process.stderr.write(`${node} does not start: ${result.error.message}\n`)
    process.exitCode = result.status ?? 1
  })
  .catch((error) => {
    process.stderr.write(`The calculators do not start: ${error.message}\n`)
    process.exitCode = 1
  })
